package org.relegend.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.relegend.bench.Job;
import org.relegend.bench.OwnPhotos;
import org.relegend.bench.rule.NetVoltage;
import org.relegend.bench.rule.TwinIndex;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.JoinedPin;
import org.relegend.hazard.Caution;
import org.relegend.hazard.Cautions;
import org.relegend.hazard.DischargeText;
import org.relegend.hazard.Hazards;
import org.relegend.hazard.MainsSign;
import org.relegend.hazard.NodeHazard;
import org.relegend.hazard.StoredCharge;
import org.relegend.hazard.VoltageLimits;
import org.relegend.lineup.PlacementCarrier;
import org.relegend.map.BoardMap;
import org.relegend.map.HazardZone;
import org.relegend.map.MapInfo;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.Subject;
import org.relegend.scan.Progress;
import org.relegend.store.MapFormat;

/**
 * The bench sheets of a map: cautions first, where it can hurt, the list of nodes, and for each
 * node a sheet with its pictures and empty boxes for readings.
 */
public final class MapSheets {
  /** What stands above every page. */
  static final String REMINDER = "Shows what people recorded; can't tell what is live.";

  private static final String DANGERS = "Where it can hurt";
  private static final String NODES = "Nodes and what is joined there, as built";
  private static final double SIGN = 30;

  /** How many bleeders of one capacitor are named; those with most of the current come first. */
  private static final int NAMED = 3;

  private final Circuit circuit;
  private final BoardMap source;
  private final Function<Picture, Path> files;
  private final Hazards hazards;
  private final TwinIndex twins;

  /**
   * Sheets of one map.
   *
   * @param files where the file of a picture is
   */
  public MapSheets(Circuit circuit, Function<Picture, Path> files) {
    this(zoned(circuit), files, circuit.map());
  }

  /** A zone drawn on one photo is printed on every photo that is lined up with it. */
  private static Circuit zoned(Circuit circuit) {
    BoardMap zoned = PlacementCarrier.of(circuit.map()).zoned();
    return zoned.equals(circuit.map()) ? circuit : Circuit.of(zoned);
  }

  private MapSheets(Circuit circuit, Function<Picture, Path> files, BoardMap result) {
    this.circuit = circuit;
    this.source = result;
    this.files = files;
    this.hazards = Hazards.of(circuit, VoltageLimits.INSTRUMENTS);
    this.twins = TwinIndex.of(circuit);
  }

  /**
   * Sheets of a map for one job: on photos of this unit, where there are any. They are as private
   * as the job.
   */
  public static MapSheets forJob(BoardMap map, Job job, Function<Picture, Path> files) {
    return new MapSheets(Circuit.of(OwnPhotos.printed(map, job.photos())), files, map);
  }

  private BoardMap map() {
    return circuit.map();
  }

  /** Every node, in the order of the map. */
  public static List<NetId> allNodes(BoardMap map) {
    return map.nets().stream().map(Net::id).toList();
  }

  /**
   * Prints.
   *
   * @param nodes whose list and sheets are wanted; all must be in the map
   * @param printed the date that is printed, so that the same call gives the same bytes
   * @throws IllegalArgumentException where the map hasn't got a node
   * @throws CancellationException where the progress says so
   */
  public FinishedSheets print(
      PaperSize paper, List<NetId> nodes, Instant printed, Progress progress) {
    for (NetId node : nodes) {
      if (map().net(node).isEmpty()) {
        throw new IllegalArgumentException("the map has no node " + node);
      }
    }
    String digest = MapFormat.digest(source);
    try (SheetDocument press = new SheetDocument(paper)) {
      PageFlow flow = new PageFlow(press);
      CutOuts cutOuts = new CutOuts(map(), files);
      front(flow, digest, printed);
      boolean listed = nodes.size() != 1; // else its own sheet tells the same
      ContentsList contents = new ContentsList(flow, nodes.size() + (listed ? 2 : 1));
      flow.newPage();
      contents.enter(DANGERS);
      dangers(flow, cutOuts);
      if (listed) {
        flow.newPage();
        contents.enter(NODES);
        nodeList(flow, nodes);
      }
      for (int i = 0; i < nodes.size(); i++) {
        if (!progress.at((double) i / nodes.size())) {
          throw new CancellationException();
        }
        flow.newPage();
        contents.enter("Node " + map().nameOf(Subject.of(nodes.get(i))));
        new NodeSheet(flow, NodeFacts.of(circuit, hazards, twins, nodes.get(i))).draw(cutOuts);
      }
      byte[] pdf =
          press.finish(
              map().info().title() + " - bench sheets",
              List.of(map().info().title(), REMINDER),
              Provenance.line(map(), digest, printed),
              printed);
      return new FinishedSheets(pdf, press.pages(), cutOuts.troubles());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void front(PageFlow flow, String digest, Instant printed) {
    MapInfo info = map().info();
    flow.heading(info.title(), 20);
    flow.paragraph("Bench sheets of a board map", 12, false);
    cautions(flow, hazards.knowsMains());
    flow.down(4);
    Provenance.of(map(), digest, printed)
        .forEach(line -> flow.indented(line, 0, PageFlow.BODY, false));
    flow.down(6);
  }

  /** All of the usual cautions, also where the map names no mains: nobody may have said so yet. */
  static void cautions(PageFlow flow, boolean mains) {
    List<String> titles = new ArrayList<>();
    List<String> texts = new ArrayList<>();
    for (Caution caution : Cautions.all()) {
      titles.add(caution.title());
      texts.add(caution.text());
    }
    flow.framed(titles, texts, 8, 2.5, 1.5 * SIGN);
    PrintedZones.triangle(
        flow.leaf(),
        HazardZone.Kind.MAINS,
        flow.press().right() - SIGN * 0.85,
        flow.y() - SIGN * 0.85,
        SIGN);
    if (!mains) {
      flow.paragraph(
          "This map names no mains net. That says nothing of the instrument: look where its"
              + " mains and stored charge are before you open it.");
    }
  }

  private void dangers(PageFlow flow, CutOuts cutOuts) {
    flow.heading(DANGERS, 14);
    List<Picture> photos =
        map().pictures().stream().filter(picture -> picture instanceof Photo).toList();
    if (photos.isEmpty()) {
      flow.paragraph("The map has no photo yet, so no hazard area is marked on any.");
    }
    cutOuts.whole(flow, photos);
    reached(flow);
    unknown(flow);
    charges(flow);
  }

  private void reached(PageFlow flow) {
    if (hazards.reached().isEmpty()) {
      flow.paragraph(
          "No node is known to carry mains or high voltage. Nobody may have said so yet.");
      return;
    }
    RuledTable table =
        new RuledTable(
            flow,
            List.of(
                new RuledTable.Column("Node", 18),
                new RuledTable.Column("Kind", 14),
                new RuledTable.Column("Volts", 9),
                new RuledTable.Column("Pins", 50)));
    hazards
        .reached()
        .forEach(
            reached ->
                table.row(
                    map().nameOf(reached.node().subject()),
                    reached.kind().word().replace('-', ' '),
                    reached.volts() == 0 ? "not told" : NetVoltage.text(reached.volts()),
                    String.join(
                        ", ",
                        reached.pins().stream()
                            .map(pin -> map().nameOf(pin.part()) + "." + pin.pin())
                            .toList())));
    flow.down(8);
  }

  /** What is taken as high until somebody tells its volts, in one line for each reason. */
  private void unknown(PageFlow flow) {
    for (MainsSign sign : hazards.signs()) {
      flow.paragraph(
          "Looks like mains: %s %s, but nothing in the map says that mains comes in there."
              .formatted(map().nameOf(sign.subject()), sign.sign()));
    }
    Map<String, List<String>> byReason = new LinkedHashMap<>();
    for (NodeHazard hazard : hazards.unknown()) {
      byReason
          .computeIfAbsent(hazard.reason(), reason -> new ArrayList<>())
          .add(map().nameOf(hazard.node().subject()));
    }
    byReason.forEach(
        (reason, names) ->
            flow.paragraph(
                "Volts not told, take as high: %s (%s)."
                    .formatted(String.join(", ", names), reason)));
  }

  private void charges(PageFlow flow) {
    List<StoredCharge> charges =
        hazards.charges().stream()
            .filter(charge -> new DischargeText(charge, hazards.limits()).asksForMeans())
            .toList();
    if (charges.isEmpty()) {
      return;
    }
    flow.heading("Stored charge: measure before touching", 11);
    RuledTable table =
        new RuledTable(
            flow,
            List.of(
                new RuledTable.Column("Capacitors", 20),
                new RuledTable.Column("Can hold", 34),
                new RuledTable.Column("Bleeder", 46)));
    for (StoredCharge charge : charges) {
      DischargeText text = new DischargeText(charge, hazards.limits());
      table.row(capacitors(charge), text.amount(), bleeder(charge) + text.fading());
      table.remark(text.means());
    }
    String unknown =
        charges.stream()
            .filter(charge -> charge.volts().isEmpty())
            .map(this::capacitors)
            .collect(Collectors.joining(", "));
    if (!unknown.isEmpty()) {
      flow.down(4);
      flow.paragraph("Nobody said what voltage these can hold: " + unknown + ".");
    }
    flow.down(4);
  }

  private String capacitors(StoredCharge charge) {
    return charge.capacitors().stream().map(map()::nameOf).collect(Collectors.joining(", "));
  }

  private String bleeder(StoredCharge charge) {
    if (charge.bleeder().isEmpty()) {
      return "";
    }
    List<PartId> resistors = charge.bleeder().get().resistors();
    String first =
        resistors.stream().limit(NAMED).map(map()::nameOf).collect(Collectors.joining(", "));
    int more = Math.max(0, resistors.size() - NAMED);
    return first + (more == 0 ? "" : " and %d more".formatted(more)) + ", which may have failed: ";
  }

  private void nodeList(PageFlow flow, List<NetId> nodes) {
    flow.heading(NODES, 14);
    RuledTable table =
        new RuledTable(
            flow,
            List.of(
                new RuledTable.Column("Node / pin", 22),
                new RuledTable.Column("Channel / role", 18),
                new RuledTable.Column("Value", 26),
                new RuledTable.Column("Evidence", 13),
                new RuledTable.Column("Twin", 21)));
    for (NetId node : nodes) {
      NodeFacts facts = NodeFacts.of(circuit, hazards, twins, node);
      Net net = facts.net();
      String danger =
          facts.dangers().stream()
              .map(PrintedZones::words)
              .reduce((a, b) -> a + ", " + b)
              .orElse("");
      table.group(net.name(), net.channel(), danger, "", facts.twins());
      for (JoinedPin pin : facts.joined().pins()) {
        table.row(
            "   " + facts.name(pin),
            pin.role(),
            pin.value(),
            facts.evidence(pin),
            facts.twins(pin));
      }
      facts.differences().forEach(table::remark);
    }
  }
}
