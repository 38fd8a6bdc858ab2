package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * A capacitor passes no direct current. Where the resistors of a node carry some away and only a
 * capacitor can bring it, that one leaks; how much follows from the voltage across it.
 */
final class CapacitorPassesDirect implements Rule {
  @Override
  public String code() {
    return "capacitor-passes-direct-current";
  }

  @Override
  public String source() {
    return "Kirchhoff's current law; a leaking coupling capacitor shifts the stage behind it (common"
        + " practice)";
  }

  @Override
  public List<Finding> inspect(Unit unit) {
    List<Finding> found = new ArrayList<>();
    for (NetId net : unit.netsRead()) {
      NodeSum.asRead(unit, net)
          .filter(sum -> sum.complete() && sum.closed() && !sum.capacitors().isEmpty())
          .filter(sum -> Math.abs(sum.amps()) > sum.tolerance())
          .flatMap(sum -> finding(unit, sum))
          .ifPresent(found::add);
    }
    return found;
  }

  /** Each capacitor that may hold enough to hurt is to be discharged first, and how. */
  private static String remedy(Unit unit, List<Blame> blames) {
    UnitHazards hazards = unit.hazards();
    StringBuilder text = new StringBuilder();
    for (Blame blame : blames) {
      hazards
          .dischargeFirst(blame.part())
          .ifPresent(how -> text.append("%s: %s. ".formatted(unit.name(blame.part()), how)));
    }
    return text
        + UnitHazards.BEFORE_TOUCHING
        + "lift one leg of the capacitor and read the node again: a leak is then gone. Ohms across it"
        + " in circuit tell little.";
  }

  private Optional<Finding> finding(Unit unit, NodeSum sum) {
    List<Blame> blames = new ArrayList<>();
    String leak = "";
    for (PinRef pin : sum.capacitors()) {
      Optional<NetId> far = unit.otherEnd(pin);
      Optional<Volts> volts = far.flatMap(unit::volts);
      double ohms = volts.map(v -> (v.value() - sum.volts()) / -sum.amps()).orElse(Double.NaN);
      if (ohms > 0 && Double.isFinite(ohms)) {
        leak = ", as through " + Volts.ohms(ohms);
        blames.add(
            new Blame(
                pin.part(),
                sum.branches().size() == 1 ? Blame.STRONG : Blame.MEDIUM,
                "passes %s from %s (%s) to %s (%s), as through %s"
                    .formatted(
                        Volts.amps(sum.amps()),
                        unit.name(far.orElseThrow()),
                        volts.orElseThrow().text(),
                        unit.name(sum.net()),
                        Volts.text(sum.volts()),
                        Volts.ohms(ohms))));
      } else if (volts.isEmpty()) {
        blames.add(
            new Blame(
                pin.part(),
                Blame.MEDIUM,
                "nothing else could bring the %s that flow at %s; its other end is not read yet"
                    .formatted(Volts.amps(sum.amps()), unit.name(sum.net()))));
      }
    }
    if (blames.isEmpty()) {
      return Optional.empty();
    }
    String message =
        "At %s (%s) %s of direct current flow that only a capacitor can bring%s."
            .formatted(unit.name(sum.net()), Volts.text(sum.volts()), Volts.amps(sum.amps()), leak);
    return Optional.of(
        new Finding(
            code(),
            Severity.ERROR,
            List.of(Subject.of(sum.net())),
            message,
            remedy(unit, blames),
            source(),
            blames));
  }
}
