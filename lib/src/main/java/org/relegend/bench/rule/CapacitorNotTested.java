package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.finding.Severity;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/** Direct voltages can't judge a capacitor whose two ends are at the same voltage. */
final class CapacitorNotTested implements ReadingRule {
  @Override
  public String code() {
    return "capacitor-not-tested";
  }

  @Override
  public String source() {
    return "Ohm's law: without voltage across it, a leak carries no current";
  }

  @Override
  public List<RuleFinding> inspect(UnitReadings unit) {
    List<RuleFinding> found = new ArrayList<>();
    for (Part part : unit.map().parts()) {
      if (unit.isFamily(part.id(), "capacitor")
          && part.pins().size() == 2
          && untested(unit, part)) {
        found.add(finding(unit, part));
      }
    }
    return found;
  }

  private static boolean untested(UnitReadings unit, Part part) {
    Optional<NetId> a = unit.netOf(new PinRef(part.id(), part.pins().get(0).number()));
    Optional<NetId> b = unit.netOf(new PinRef(part.id(), part.pins().get(1).number()));
    Optional<NetVoltage> one = a.flatMap(unit::volts);
    Optional<NetVoltage> other = b.flatMap(unit::volts);
    return one.isPresent()
        && other.isPresent()
        && (one.get().read() || other.get().read())
        && Math.abs(one.get().value() - other.get().value())
            <= one.get().uncertainty() + other.get().uncertainty();
  }

  private RuleFinding finding(UnitReadings unit, Part part) {
    return new RuleFinding(
        code(),
        Severity.INFORMATION,
        List.of(Subject.of(part.id())),
        "%s has the same direct voltage at both ends: these readings can't tell whether it leaks."
            .formatted(unit.name(part.id())),
        "Judge it with a signal, or out of circuit.",
        source(),
        List.of());
  }
}
