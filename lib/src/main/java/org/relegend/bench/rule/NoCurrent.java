package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.relegend.finding.Severity;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * A transistor whose collector takes no current, though nothing bad was read at its controls. Where
 * one that shares its emitter carries current, the fault is in this one, its pin or its joint;
 * where none does, what draws the common current is missing.
 */
final class NoCurrent implements ReadingRule {
  /** Less of a healthy one's current than this is none. */
  private static final double NONE = 0.15;

  private static final List<String> OUTPUTS = List.of("collector", "drain", "anode");
  private static final List<String> COMMON = List.of("emitter", "source", "cathode");
  private static final List<String> CONTROLS = List.of("base", "gate", "grid");

  @Override
  public String code() {
    return "no-current";
  }

  @Override
  public String source() {
    return "transistor fault-finding texts: collector at the supply, no current, open or cut off";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    Set<PartId> stated = new LinkedHashSet<>();
    for (Part part : unit.map().parts()) {
      if (unit.isFamily(part.id(), "transistor") || unit.isFamily(part.id(), "valve")) {
        for (CircuitElement element : unit.elements(part.id())) {
          if (cutOff(unit, element) && !stated.contains(part.id())) {
            finding(unit, element)
                .ifPresent(
                    finding -> {
                      found.add(finding);
                      stated.add(part.id());
                    });
          }
        }
      }
    }
    return found;
  }

  private static Optional<NetId> net(CircuitElement element, List<String> roles) {
    return roles.stream().flatMap(role -> element.net(role).stream()).findFirst();
  }

  /** Whether the output takes none of the current that a healthy one takes. */
  private static boolean cutOff(UnitReadings unit, CircuitElement element) {
    Optional<NodeCurrents> is = sum(unit, element, true);
    Optional<NodeCurrents> should = sum(unit, element, false);
    if (is.isEmpty() || should.isEmpty()) {
      return false;
    }
    double usual = Math.abs(should.get().amps());
    double slack = is.get().tolerance() + should.get().tolerance();
    return usual > 2 * slack && Math.abs(is.get().amps()) < NONE * usual;
  }

  private static boolean carries(UnitReadings unit, CircuitElement element) {
    Optional<NodeCurrents> is = sum(unit, element, true);
    return is.isPresent() && Math.abs(is.get().amps()) > 2 * is.get().tolerance();
  }

  private static Optional<NodeCurrents> sum(
      UnitReadings unit, CircuitElement element, boolean asRead) {
    Optional<NetId> net = net(element, OUTPUTS);
    Optional<NodeCurrents> sum =
        net.flatMap(n -> asRead ? NodeCurrents.asRead(unit, n) : NodeCurrents.healthy(unit, n));
    return sum.filter(s -> s.complete() && s.devices().size() == 1 && !s.branches().isEmpty());
  }

  private Optional<RuleFinding> finding(UnitReadings unit, CircuitElement element) {
    Optional<NetId> common = net(element, COMMON);
    List<CircuitElement> sharing = common.map(net -> sharing(unit, net)).orElse(List.of());
    List<CircuitElement> all = sharing.isEmpty() ? List.of(element) : sharing;
    boolean explained =
        all.stream().anyMatch(other -> net(other, CONTROLS).map(unit::isBad).orElse(false));
    if (explained) {
      return Optional.empty();
    }
    boolean otherCarries =
        all.stream().anyMatch(other -> !other.equals(element) && carries(unit, other));
    boolean oneOfMany = all.size() > 1 && otherCarries;
    List<LikelihoodRatio> blames = new ArrayList<>();
    String none = "%s takes no current".formatted(element.name());
    blames.add(
        new LikelihoodRatio(
            element.part(),
            oneOfMany ? LikelihoodRatio.STRONG : LikelihoodRatio.MEDIUM,
            oneOfMany
                ? none + ", while the other of its pair does: itself, its pin or its joint"
                : none + " though its controls read well"));
    if (!oneOfMany && common.isPresent()) {
      supply(unit, common.get(), element.part())
          .forEach(
              part ->
                  blames.add(
                      new LikelihoodRatio(
                          part,
                          3 * LikelihoodRatio.MEDIUM,
                          "draws or sets the current that %s should carry"
                              .formatted(element.name()))));
    }
    return Optional.of(
        new RuleFinding(
            code(),
            Severity.ERROR,
            List.of(Subject.of(element.part())),
            none + (oneOfMany ? ", though another with the same emitter does." : "."),
            oneOfMany
                ? "Read at the pin itself and at its pad: a lifted pad or dry joint shows between the"
                    + " two."
                : "Follow its current: read the nodes from its emitter to the rail.",
            source(),
            blames));
  }

  private static List<CircuitElement> sharing(UnitReadings unit, NetId common) {
    List<CircuitElement> sharing = new ArrayList<>();
    Set<PartId> parts = new LinkedHashSet<>();
    unit.pins(common).forEach(pin -> parts.add(pin.part()));
    for (PartId part : parts) {
      if (unit.isFamily(part, "transistor") || unit.isFamily(part, "valve")) {
        unit.elements(part).stream()
            .filter(element -> net(element, COMMON).equals(Optional.of(common)))
            .forEach(sharing::add);
      }
    }
    return sharing;
  }

  /** The resistors on the way of the emitter's current, and those that set the current there. */
  private static Set<PartId> supply(UnitReadings unit, NetId common, PartId device) {
    Set<PartId> parts = new LinkedHashSet<>();
    resistors(unit, common, parts);
    for (PinRef pin : unit.pins(common)) {
      for (CircuitElement element : unit.elements(pin.part())) {
        boolean source = element.net("collector").equals(Optional.of(common));
        if (source && !net(element, COMMON).equals(Optional.of(common))) {
          net(element, COMMON).ifPresent(net -> resistors(unit, net, parts));
          net(element, CONTROLS).ifPresent(net -> resistors(unit, net, parts));
          if (!element.part().equals(device)) {
            parts.add(element.part());
          }
        }
      }
    }
    return parts;
  }

  private static void resistors(UnitReadings unit, NetId net, Set<PartId> into) {
    if (!unit.isRail(net)) {
      unit.pins(net).stream()
          .map(PinRef::part)
          .filter(part -> unit.ohms(part).isPresent())
          .forEach(into::add);
    }
  }
}
