package org.relegend.circuit;

import java.util.Locale;
import org.relegend.marking.ComponentValues;
import org.relegend.marking.MarkingReadings;
import org.relegend.marking.Quantity;
import org.relegend.marking.ValueReading;

/** Values of resistors that stand in for a wire: of no ohms in every reading, or called a link. */
final class ZeroOhmLinks {
  private ZeroOhmLinks() {}

  static boolean is(String value) {
    String text = value.strip().toLowerCase(Locale.ROOT);
    if (text.equals("link") || text.startsWith("link ")) {
      return true;
    }
    MarkingReadings<ValueReading> read = ComponentValues.read(value, Quantity.RESISTANCE);
    return read.outcome() == MarkingReadings.Outcome.READ
        && read.readings().stream().allMatch(reading -> reading.amount().value() == 0);
  }
}
