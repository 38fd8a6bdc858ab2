package org.relegend.demo;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.PlacedPart;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Spot;
import org.relegend.demo.design.Tables;
import org.relegend.demo.draw.Noise;
import org.relegend.demo.truth.Place;
import org.relegend.map.Attestation;
import org.relegend.map.Board;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.Channel;
import org.relegend.map.Designator;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapInfo;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Potential;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.TwinPair;

/**
 * The leveller's board map as a technician would have made it by the middle of the work: all nets
 * traced, channel A placed in full, some of channel B not placed yet, few twins said.
 */
final class DemoMap {
  private static final BoardId BOARD = new BoardId("main");
  private static final String AUTHOR = "mk";
  private static final Instant TRACED = Instant.parse("2026-03-02T10:00:00Z");
  private static final Instant PLACED = Instant.parse("2026-03-02T14:00:00Z");
  private static final Set<String> LEFT_TO_FIND =
      Set.of("R213", "R214", "R216", "R218", "R223", "R224", "Q203", "D201");
  private static final Set<String> TALL =
      Set.of("T1", "SW1", "J1", "C1", "C2", "C4", "C5", "BR1", "Q1", "Q2");
  private static final List<String> TWINS = List.of("J101", "Q101", "C102", "U101", "U102", "R101");

  private final Design design;

  DemoMap(Design design) {
    this.design = design;
  }

  /** The map over pictures whose files are known, with the places where everything truly lies. */
  BoardMap map(List<Picture> pictures, List<Place> truth, List<HazardZone> zones) {
    BoardMap empty =
        BoardMap.empty(
            "quillmarsh-type-40",
            new MapInfo(
                "Quillmarsh Type 40 programme leveller",
                "Quillmarsh",
                "Type 40",
                "ISS 3",
                "A made-up instrument with two channels, for trying Relegend."));
    Board board =
        new Board(BOARD, "Main board", "T40-B ISS 3", design.width(), design.height(), "");
    List<Channel> channels =
        List.of(new Channel("A", "Channel A", ""), new Channel("B", "Channel B", ""));
    return empty
        .with(MapTables.BOARDS, empty.boards().with(board))
        .with(MapTables.PICTURES, Table.of(pictures))
        .with(MapTables.CHANNELS, Table.of(channels))
        .with(MapTables.PARTS, Table.of(design.parts().stream().map(this::part).toList()))
        .with(MapTables.NETS, Table.of(nets()))
        .with(MapTables.PLACEMENTS, Table.of(placements(truth)))
        .with(MapTables.TWINS, Table.of(twins()))
        .with(MapTables.DISCREPANCIES, Table.of(discrepancies()))
        .with(MapTables.ZONES, Table.of(zones));
  }

  static BoardId board() {
    return BOARD;
  }

  static Attestation attested(Evidence evidence) {
    return new Attestation(evidence, AUTHOR, PLACED);
  }

  private Part part(PlacedPart placed) {
    Collection<PlacedPin> pins = design.pinsOf(placed.designator()).values();
    String channel = placed.channel().equals("common") ? "" : placed.channel();
    return new Part(
        new PartId(placed.designator()),
        new Designator(placed.designator()),
        placed.kind(),
        placed.value(),
        DemoSections.casing(placed.kind()),
        BOARD,
        channel,
        pins.stream().map(pin -> new Pin(pin.pin(), pin.role())).toList(),
        DemoSections.of(placed.kind()),
        "");
  }

  private List<Net> nets() {
    Map<String, Double> volts = nominal();
    List<Net> nets = new ArrayList<>();
    design
        .netsAsBuilt()
        .forEach(
            (name, pins) -> {
              String channel =
                  name.matches("[AB]_.*") && !name.startsWith("AC") ? name.substring(0, 1) : "";
              List<Net.Member> members =
                  pins.stream().map(pin -> new Net.Member(ref(pin), List.of(traced(pin)))).toList();
              nets.add(
                  new Net(new NetId(name), name, channel, potential(name, volts), members, ""));
            });
    return nets;
  }

  /** Mostly seen as copper, some beeped; what the drawing contradicts was measured. */
  private static Attestation traced(PlacedPin pin) {
    Evidence evidence =
        !pin.builtNet().equals(pin.drawnNet())
            ? Evidence.MEASURED
            : Noise.of(40, pin.name(), 0) < 0.3 ? Evidence.BEEPED : Evidence.SEEN;
    return new Attestation(evidence, AUTHOR, TRACED);
  }

  private static Potential potential(String net, Map<String, Double> volts) {
    if (net.startsWith("MAINS")) {
      return new Potential(Potential.Nature.MAINS, 230);
    }
    if (net.equals("EARTH")) {
      return new Potential(Potential.Nature.EARTH, 0);
    }
    if (net.equals("0V")) {
      return new Potential(Potential.Nature.REFERENCE, 0);
    }
    if (net.startsWith("AC_")) {
      return new Potential(Potential.Nature.AC, 17);
    }
    Double known = volts.get(net);
    return known == null ? Potential.UNKNOWN : new Potential(Potential.Nature.DC, known);
  }

  /** The direct voltages of a healthy unit, by net. */
  private static Map<String, Double> nominal() {
    Map<String, Double> volts = new LinkedHashMap<>();
    for (CSVRecord row : Tables.rows("readings_supply.csv")) {
      volts.put(row.get("node"), Double.valueOf(row.get("nominal V")));
    }
    for (CSVRecord row : Tables.rows("readings.csv")) {
      double value = Double.parseDouble(row.get("nominal V good"));
      volts.put("A_" + row.get("node"), value);
      volts.put("B_" + row.get("node"), value);
    }
    return volts;
  }

  private List<Placement> placements(List<Place> truth) {
    Map<Placement.Key, Integer> count = new LinkedHashMap<>();
    List<Placement> placements = new ArrayList<>();
    for (Place place : truth) {
      if (!isPlaced(place)) {
        continue;
      }
      PictureId picture = new PictureId(place.picture());
      Subject subject = Subject.parse(place.subject());
      int ordinal = count.merge(new Placement.Key(picture, subject, 1), 1, Integer::sum);
      placements.add(
          new Placement(
              picture,
              subject,
              ordinal,
              point(place.at()),
              place.outline().stream().map(DemoMap::point).toList(),
              List.of(attested(evidence(place)))));
    }
    return placements;
  }

  /** The other unit's photos are no pictures of the map. */
  private boolean isPlaced(Place place) {
    String part = place.subject().replaceAll("[./].*", "");
    boolean page = place.picture().startsWith("page");
    if (place.picture().startsWith("other-")) {
      return false;
    }
    return switch (place.kind()) {
      case BODY -> page || !LEFT_TO_FIND.contains(part);
      case PAD ->
          !LEFT_TO_FIND.contains(part)
              && !(place.picture().equals("component") && TALL.contains(part));
      case SECTION, PIN, LABEL -> true;
      case NAME, HOLE, CORNER -> false;
    };
  }

  private Evidence evidence(Place place) {
    boolean twin =
        !place.picture().startsWith("page")
            && place.kind() == Place.Kind.BODY
            && place.subject().matches("[A-Z]+2\\d\\d");
    return twin ? Evidence.MATCHED : Evidence.SEEN;
  }

  private List<TwinPair> twins() {
    return TWINS.stream()
        .map(
            first ->
                new TwinPair(
                    Subject.of(new PartId(first)),
                    Subject.of(new PartId(first.replaceFirst("1", "2"))),
                    List.of(attested(Evidence.MATCHED))))
        .toList();
  }

  private List<DrawingDiscrepancy> discrepancies() {
    return design.pins().stream()
        .filter(pin -> !pin.builtNet().equals(pin.drawnNet()))
        .map(
            pin ->
                new DrawingDiscrepancy(
                    Subject.of(ref(pin)),
                    DrawingDiscrepancy.Aspect.NET,
                    pin.drawnNet(),
                    List.of(new Attestation(Evidence.MEASURED, AUTHOR, TRACED)),
                    "The drawing has the halves of the op-amp exchanged."))
        .toList();
  }

  private static PinRef ref(PlacedPin pin) {
    return new PinRef(new PartId(pin.part()), pin.pin());
  }

  static Point point(Spot at) {
    return new Point(Math.rint(at.x() * 100) / 100, Math.rint(at.y() * 100) / 100);
  }
}
