package org.relegend.bench.suspect;

import java.util.List;
import java.util.Optional;
import org.relegend.bench.Hypothesis;
import org.relegend.bench.Reading;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.marking.Quantity;
import org.relegend.marking.Tolerance;
import org.relegend.marking.ValueReading;

/** Parts that were measured by themselves: they need no second proof. */
final class MeasuredParts {
  private static final Tolerance USUAL = Tolerance.fraction(0.05);

  private MeasuredParts() {}

  /**
   * Whether a resistor was measured out of circuit and is as marked. A capacitor's capacitance says
   * nothing of its leak, so that none is cleared by it.
   */
  static boolean isGood(UnitReadings unit, PartId part) {
    Optional<Reading> last = last(unit, part);
    Optional<ValueReading> marking = unit.marking(part, Quantity.RESISTANCE);
    if (last.isEmpty() || marking.isEmpty() || last.get().quantity() != Quantity.RESISTANCE) {
      return false;
    }
    double nominal = marking.get().amount().value();
    Tolerance tolerance = marking.get().tolerance().orElse(USUAL);
    return unit.isFamily(part, "resistor")
        && last.get().value() >= tolerance.lowest(nominal)
        && last.get().value() <= tolerance.highest(nominal);
  }

  /** Whether a part was measured out of circuit, or a hypothesis of it alone is decided. */
  static boolean isSettled(UnitReadings unit, PartId part) {
    return last(unit, part).isPresent()
        || unit.job().hypotheses().stream()
            .anyMatch(
                one -> one.parts().equals(List.of(part)) && one.result() != Hypothesis.Result.OPEN);
  }

  private static Optional<Reading> last(UnitReadings unit, PartId part) {
    return unit.job().currentReadings().stream()
        .filter(reading -> reading.setting().lifted())
        .filter(reading -> reading.at().equals(Subject.of(part)))
        .reduce((first, second) -> second);
  }
}
