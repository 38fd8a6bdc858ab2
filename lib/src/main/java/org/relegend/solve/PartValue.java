package org.relegend.solve;

import java.util.OptionalDouble;
import org.relegend.marking.ComponentValues;
import org.relegend.marking.MarkingReadings;
import org.relegend.marking.Quantity;
import org.relegend.marking.Tolerance;
import org.relegend.marking.ValueReading;

/** What the value text of a part gives the solver. */
final class PartValue {
  /** Healthy parts of unknown tolerance: 5 % (common practice for film and carbon resistors). */
  private static final double USUAL_TOLERANCE = 0.05;

  private PartValue() {}

  static OptionalDouble of(String text, Quantity quantity) {
    MarkingReadings<ValueReading> readings = ComponentValues.read(text, quantity);
    return readings.outcome() == MarkingReadings.Outcome.READ
        ? OptionalDouble.of(readings.readings().get(0).amount().value())
        : OptionalDouble.empty();
  }

  /**
   * One standard deviation as a fraction: values spread evenly over the tolerance (JCGM 100:2008,
   * 4.3.7).
   */
  static double spread(String text, Quantity quantity) {
    double tolerance =
        ComponentValues.read(text, quantity)
            .first()
            .flatMap(ValueReading::tolerance)
            .filter(found -> found.basis() == Tolerance.Basis.FRACTION)
            .map(found -> Math.max(found.high(), -found.low()))
            .orElse(USUAL_TOLERANCE);
    return tolerance / Math.sqrt(3);
  }
}
