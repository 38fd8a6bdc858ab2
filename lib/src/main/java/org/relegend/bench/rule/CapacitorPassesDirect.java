package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.finding.Severity;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * A capacitor passes no direct current. Where the resistors of a node carry some away and only a
 * capacitor can bring it, that one leaks; how much follows from the voltage across it.
 */
final class CapacitorPassesDirect implements ReadingRule {
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
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (NetId net : unit.netsRead()) {
      NodeCurrents.asRead(unit, net)
          .filter(sum -> sum.complete() && sum.closed() && !sum.capacitors().isEmpty())
          .filter(sum -> Math.abs(sum.amps()) > sum.tolerance())
          .flatMap(sum -> finding(unit, sum))
          .ifPresent(found::add);
    }
    return found;
  }

  /** Each capacitor that may hold enough to hurt is to be discharged first, and how. */
  private static String remedy(UnitReadings unit, List<LikelihoodRatio> blames) {
    UnitHazards hazards = unit.hazards();
    StringBuilder text = new StringBuilder();
    for (LikelihoodRatio blame : blames) {
      hazards
          .dischargeFirst(blame.part())
          .ifPresent(how -> text.append("%s: %s. ".formatted(unit.name(blame.part()), how)));
    }
    return text
        + UnitHazards.BEFORE_TOUCHING
        + "lift one leg of the capacitor and read the node again: a leak is then gone. Ohms across it"
        + " in circuit tell little.";
  }

  private Optional<RuleFinding> finding(UnitReadings unit, NodeCurrents sum) {
    List<LikelihoodRatio> blames = new ArrayList<>();
    String leak = "";
    for (PinRef pin : sum.capacitors()) {
      Optional<NetId> far = unit.otherEnd(pin);
      Optional<NetVoltage> volts = far.flatMap(unit::volts);
      double ohms = volts.map(v -> (v.value() - sum.volts()) / -sum.amps()).orElse(Double.NaN);
      if (ohms > 0 && Double.isFinite(ohms)) {
        leak = ", as through " + NetVoltage.ohms(ohms);
        blames.add(
            new LikelihoodRatio(
                pin.part(),
                sum.branches().size() == 1 ? LikelihoodRatio.STRONG : LikelihoodRatio.MEDIUM,
                "passes %s from %s (%s) to %s (%s), as through %s"
                    .formatted(
                        NetVoltage.amps(sum.amps()),
                        unit.name(far.orElseThrow()),
                        volts.orElseThrow().text(),
                        unit.name(sum.net()),
                        NetVoltage.text(sum.volts()),
                        NetVoltage.ohms(ohms))));
      } else if (volts.isEmpty()) {
        blames.add(
            new LikelihoodRatio(
                pin.part(),
                LikelihoodRatio.MEDIUM,
                "nothing else could bring the %s that flow at %s; its other end is not read yet"
                    .formatted(NetVoltage.amps(sum.amps()), unit.name(sum.net()))));
      }
    }
    if (blames.isEmpty()) {
      return Optional.empty();
    }
    String message =
        "At %s (%s) %s of direct current flow that only a capacitor can bring%s."
            .formatted(
                unit.name(sum.net()),
                NetVoltage.text(sum.volts()),
                NetVoltage.amps(sum.amps()),
                leak);
    return Optional.of(
        new RuleFinding(
            code(),
            Severity.ERROR,
            List.of(Subject.of(sum.net())),
            message,
            remedy(unit, blames),
            source(),
            blames));
  }
}
