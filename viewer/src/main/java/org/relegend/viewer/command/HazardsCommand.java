package org.relegend.viewer.command;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Node;
import org.relegend.hazard.Across;
import org.relegend.hazard.Battery;
import org.relegend.hazard.Cautions;
import org.relegend.hazard.Discharge;
import org.relegend.hazard.HazardousNode;
import org.relegend.hazard.Hazards;
import org.relegend.hazard.MainsReach;
import org.relegend.hazard.MainsSign;
import org.relegend.hazard.NodeHazard;
import org.relegend.hazard.StoredCharge;
import org.relegend.hazard.UnmarkedHazard;
import org.relegend.hazard.VoltageLimits;
import org.relegend.map.BoardMap;
import org.relegend.map.HazardZone;
import org.relegend.map.Net;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hazards FOLDER}. */
@Command(
    name = "hazards",
    description = {
      "Tells what mains and high voltage reach and where charge is stored.",
      "Also what isolates, and what nobody outlined. What isn't listed is not known to be without danger."
    })
final class HazardsCommand extends JsonCommand {
  @Parameters(index = "0", paramLabel = "FOLDER", description = "the map's folder")
  private Path folder = Path.of("");

  @Option(
      names = "--limits",
      paramLabel = "NAME",
      description = "what counts as high voltage; iec-61010 if not given, a wrong name lists all")
  private String limits = VoltageLimits.INSTRUMENTS.name();

  @Mixin private KindsOption kinds = new KindsOption();

  @Override
  CommandResult answer() throws CommandFailure, StoreException {
    VoltageLimits chosen = VoltageLimits.find(limits).orElse(null);
    if (chosen == null) {
      throw new CommandFailure(
          "there are no limits called \"%s\": give one of %s"
              .formatted(
                  limits,
                  VoltageLimits.ALL.stream()
                      .map(VoltageLimits::name)
                      .collect(Collectors.joining(", "))));
    }
    BoardMap map = MapFolder.openReadOnly(folder).map();
    Circuit circuit = kinds.circuit(map);
    Hazards hazards = Hazards.of(circuit, chosen);
    return new CommandResult(
        holds(hazards) ? ExitCode.OK : ExitCode.DOES_NOT_HOLD,
        () -> json(circuit, hazards),
        out -> new HazardsText(map, hazards).print(out));
  }

  private static boolean holds(Hazards hazards) {
    return hazards.unmarked().isEmpty()
        && hazards.signs().isEmpty()
        && hazards.mains().chassis().isEmpty()
        && hazards.mains().contradictions().isEmpty()
        && hazards.mains().barriers().stream().allMatch(barrier -> barrier.failure().isEmpty());
  }

  private static Json json(Circuit circuit, Hazards hazards) {
    BoardMap map = circuit.map();
    MainsReach mains = hazards.mains();
    return Json.object()
        .put("limits", limits(hazards.limits()))
        .put("reached", Json.array(hazards.reached(), reached -> reached(map, reached, "carries")))
        .put("mayReach", Json.array(hazards.faults(), fault -> reached(map, fault, "fault")))
        .put("unknown", Json.array(hazards.unknown(), node -> unknown(circuit, node)))
        .put("across", Json.array(hazards.across(), pair -> across(map, pair)))
        .put("looksLikeMains", Json.array(hazards.signs(), sign -> sign(map, sign)))
        .put("batteries", Json.array(hazards.batteries(), cell -> battery(map, cell)))
        .put("barriers", Json.array(mains.barriers(), barrier -> barrier(map, barrier)))
        .put("bridges", Json.array(mains.bridges(), bridge -> bridge(map, bridge)))
        .put(
            "earth",
            Json.array(
                mains.earthed().stream().map(step -> step.in().part()).distinct().toList(),
                part -> Json.of(map.nameOf(part))))
        .put("liveReference", Json.array(mains.chassis(), net -> name(map, Subject.of(net))))
        .put("assumedJoined", parts(map, mains.assumed()))
        .put(
            "contradictions",
            Json.array(
                mains.contradictions(),
                found ->
                    Json.object()
                        .put("pin", name(map, Subject.of(found.pin())))
                        .put("net", name(map, Subject.of(found.net())))
                        .put("message", found.message())))
        .put("noVoltage", Json.array(hazards.noVolts(), net -> name(map, Subject.of(net))))
        .put("unmarked", Json.array(hazards.unmarked(), danger -> unmarked(map, danger)))
        .put("unplaced", pins(map, hazards.unplaced()))
        .put("proposals", Json.array(hazards.proposals(circuit), HazardsCommand::proposal))
        .put("charge", Json.array(hazards.charges(), charge -> charge(map, hazards, charge)))
        .put(
            "cautions",
            Json.array(
                Cautions.all(),
                caution ->
                    Json.object().put("title", caution.title()).put("text", caution.text())));
  }

  private static Json limits(VoltageLimits limits) {
    return Json.object()
        .put("name", limits.name())
        .put("title", limits.title())
        .put("acVolts", limits.acVolts())
        .put("dcVolts", limits.dcVolts())
        .put("source", limits.source());
  }

  private static Json reached(BoardMap map, HazardousNode reached, String grade) {
    Json.Obj object =
        Json.object()
            .put("net", reached.node() instanceof Node.OfNet ? nameOf(map, reached.node()) : "")
            .put("pins", pins(map, reached.pins()))
            .put("kind", reached.kind().word())
            .put("grade", grade)
            .put("computed", reached.computed())
            .put("from", nameOf(map, reached.source()))
            .put("through", parts(map, reached.through()));
    return reached.volts() == 0 ? object : object.put("volts", reached.volts());
  }

  private static Json unknown(Circuit circuit, NodeHazard hazard) {
    BoardMap map = circuit.map();
    boolean net = hazard.node() instanceof Node.OfNet;
    List<PinRef> pins =
        hazard.node() instanceof Node.OfNet of
            ? map.net(of.net()).map(Net::pins).orElse(List.of())
            : List.of(((Node.OfPin) hazard.node()).pin());
    Json.Obj object =
        Json.object()
            .put("net", net ? nameOf(map, hazard.node()) : "")
            .put("pins", pins(map, pins))
            .put("why", hazard.reason());
    if (hazard.volts().isPresent()) {
      object = object.put("volts", hazard.volts().getAsDouble());
    }
    return hazard.joules().isEmpty() ? object : object.put("joules", hazard.joules().getAsDouble());
  }

  private static Json across(BoardMap map, Across pair) {
    return Json.object()
        .put("positive", nameOf(map, pair.positive()))
        .put("negative", nameOf(map, pair.negative()))
        .put("volts", pair.volts());
  }

  private static Json sign(BoardMap map, MainsSign sign) {
    return Json.object()
        .put("of", map.nameOf(sign.subject()))
        .put("sign", sign.sign())
        .put("nodes", Json.array(sign.nodes(), node -> Json.of(nameOf(map, node))));
  }

  private static Json battery(BoardMap map, Battery battery) {
    return Json.object()
        .put("part", map.nameOf(battery.part()))
        .put("chemistry", battery.chemistry())
        .put("caution", battery.caution());
  }

  private static Json barrier(BoardMap map, MainsReach.Barrier barrier) {
    return Json.object()
        .put("part", map.nameOf(barrier.part()))
        .put("near", pins(map, barrier.near()))
        .put("far", pins(map, barrier.far()))
        .put("holds", barrier.failure().isEmpty())
        .put("bypassedThrough", parts(map, barrier.way()));
  }

  private static Json bridge(BoardMap map, MainsReach.Bridge bridge) {
    Json.Obj object =
        Json.object()
            .put("part", map.nameOf(bridge.near().part()))
            .put("near", name(map, Subject.of(bridge.near())))
            .put("far", name(map, Subject.of(bridge.far())))
            .put("walked", bridge.walked());
    return bridge.amps().isEmpty() ? object : object.put("amps", bridge.amps().getAsDouble());
  }

  private static Json unmarked(BoardMap map, UnmarkedHazard danger) {
    return Json.object()
        .put("picture", danger.picture().text())
        .put("of", map.nameOf(danger.subject()))
        .put("x", danger.at().x())
        .put("y", danger.at().y())
        .put("kind", danger.kind().word())
        .put("outside", danger.outside());
  }

  static Json proposal(Hazards.Proposal proposal) {
    return Json.object()
        .put("picture", proposal.picture().text())
        .put("kind", proposal.kind().word())
        .put("outline", Json.array(proposal.outline(), HazardsCommand::point));
  }

  private static Json point(Point point) {
    return Json.array(List.of(Json.of(point.x()), Json.of(point.y())));
  }

  private static Json charge(BoardMap map, Hazards hazards, StoredCharge charge) {
    Json.Obj object =
        Json.object()
            .put("capacitors", parts(map, charge.capacitors()))
            .put("between", Json.array(charge.ends(), end -> Json.of(nameOf(map, end))))
            .put("basis", charge.basis().name().toLowerCase(java.util.Locale.ROOT))
            .put("valueUnknown", parts(map, charge.unread()))
            .put("farads", charge.farads());
    if (charge.rated().isPresent()) {
      object = object.put("ratedVolts", charge.rated().getAsDouble());
    }
    if (charge.volts().isPresent()) {
      object = object.put("volts", charge.volts().getAsDouble());
    }
    if (charge.discharge().isPresent()) {
      object = object.put("joules", charge.discharge().get().joules());
      object = object.put("coulombs", charge.discharge().get().coulombs());
      object = means(object, charge.discharge().get());
    }
    if (charge.bleeder().isPresent()) {
      object = object.put("bleedOhms", charge.bleeder().get().ohms());
      object = object.put("bleeders", parts(map, charge.bleeder().get().resistors()));
    }
    object = seconds(object, "atLeastSecondsToLimit", charge.secondsTo(hazards.limits().dcVolts()));
    object = seconds(object, "atLeastSecondsTo1V", charge.secondsTo(Discharge.LOW_VOLTS));
    boolean probe = charge.discharge().filter(Discharge::needsProbe).isPresent();
    return object.put(
        "caution",
        Cautions.of(HazardZone.Kind.STORED_CHARGE).text()
            + (probe ? " " + Cautions.of("probe").text() : ""));
  }

  /** None where the voltage is lower from the start: 0 would read as nothing to wait for. */
  private static Json.Obj seconds(Json.Obj object, String name, OptionalDouble seconds) {
    return seconds.orElse(0) == 0 ? object : object.put(name, seconds.getAsDouble());
  }

  /** A resistor, or above what resistors bear a probe made for it. */
  private static Json.Obj means(Json.Obj object, Discharge full) {
    return full.proposal()
        .map(resistor -> object.put("dischargeResistor", resistor(resistor)))
        .orElseGet(
            () ->
                object.put(
                    "dischargeProbe",
                    Json.object().put("volts", full.volts()).put("joules", full.joules())));
  }

  private static Json resistor(Discharge.Resistor resistor) {
    return Json.object()
        .put("ohms", resistor.ohms())
        .put("volts", resistor.volts())
        .put("inSeriesAtLeast", resistor.inSeries())
        .put("watts", resistor.watts())
        .put("joules", resistor.joules())
        .put("atLeastSecondsTo1V", resistor.seconds());
  }

  private static Json pins(BoardMap map, List<PinRef> pins) {
    return Json.array(pins, pin -> name(map, Subject.of(pin)));
  }

  private static Json parts(BoardMap map, List<PartId> parts) {
    return Json.array(parts, part -> Json.of(map.nameOf(part)));
  }

  private static Json name(BoardMap map, Subject subject) {
    return Json.of(map.nameOf(subject));
  }

  static String nameOf(BoardMap map, Node node) {
    return map.nameOf(node.subject());
  }
}
