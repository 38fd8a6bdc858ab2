package org.relegend.hazard;

import java.util.OptionalDouble;
import org.relegend.map.Part;
import org.relegend.marking.CapacitorSections;
import org.relegend.marking.ComponentValues;
import org.relegend.marking.MarkingReadings;
import org.relegend.marking.Quantity;
import org.relegend.marking.ValueReading;

/**
 * What a part's value says, where a marking allows several readings the greatest: more charge, a
 * slower discharge.
 */
final class WorstCaseValues {
  private WorstCaseValues() {}

  static OptionalDouble farads(Part part) {
    return greatest(part, Quantity.CAPACITANCE);
  }

  /**
   * Of one section of a can: the greatest that its value names, since nobody told which pin is
   * which.
   */
  static OptionalDouble faradsOfSection(Part part) {
    OptionalDouble greatest =
        CapacitorSections.of(part.value()).stream()
            .mapToDouble(section -> section.capacitance().value())
            .max();
    return greatest.isPresent() ? greatest : farads(part);
  }

  static OptionalDouble ohms(Part part) {
    return greatest(part, Quantity.RESISTANCE);
  }

  /** The voltage that a battery's value tells. */
  static OptionalDouble volts(Part part) {
    return greatest(part, Quantity.VOLTAGE);
  }

  /** The highest voltage told beside a capacitor's value. */
  static OptionalDouble ratedVolts(Part part) {
    return ComponentValues.read(part.value(), Quantity.CAPACITANCE).readings().stream()
        .flatMap(reading -> reading.ratings().stream())
        .filter(rating -> rating.quantity() == Quantity.VOLTAGE)
        .mapToDouble(rating -> rating.value())
        .max();
  }

  private static OptionalDouble greatest(Part part, Quantity quantity) {
    MarkingReadings<ValueReading> readings = ComponentValues.read(part.value(), quantity);
    return readings.outcome() == MarkingReadings.Outcome.READ
        ? readings.readings().stream()
            .mapToDouble(reading -> reading.amount().value())
            .filter(value -> value > 0)
            .max()
        : OptionalDouble.empty();
  }
}
