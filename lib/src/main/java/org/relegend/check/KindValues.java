package org.relegend.check;

import java.util.Optional;
import org.relegend.circuit.Kind;
import org.relegend.map.Part;
import org.relegend.marking.ComponentValues;
import org.relegend.marking.MarkingReadings;
import org.relegend.marking.ValueReading;

/** Reads the value of a part as its kind tells what it must be. */
final class KindValues {
  private KindValues() {}

  static MarkingReadings<ValueReading> read(CheckContext context, Part part) {
    Optional<Kind> kind = context.kind(part);
    if (kind.isEmpty()) {
      return ComponentValues.read(part.value());
    }
    // a part whose value tells no number is described in words: nothing is expected of those
    return kind.get().read(part.value()).orElseGet(() -> ComponentValues.read(""));
  }

  static MarkingReadings.Outcome outcome(CheckContext context, Part part) {
    return read(context, part).outcome();
  }

  static String reason(CheckContext context, Part part) {
    return read(context, part).reason();
  }
}
