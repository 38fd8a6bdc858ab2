package org.relegend.twin;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Terminal;
import org.relegend.map.Part;
import org.relegend.marking.ComponentValues;
import org.relegend.marking.MarkingReadings;
import org.relegend.marking.Quantity;
import org.relegend.marking.ValueReading;

/**
 * What makes elements alike: kind and roles of the pins, and the value as an amount, so that 4k7
 * and 4700 are one.
 */
final class ElementSimilarity {
  private final Map<String, Long> values = new HashMap<>();
  private final Map<String, Integer> roles = new HashMap<>();

  /** Of an element of this part with these pins. */
  long kind(Part part, Optional<Kind> kind, List<Terminal> pins) {
    List<String> words = new ArrayList<>();
    pins.forEach(pin -> words.add(role(pin)));
    words.sort(null);
    String name = kind.map(Kind::name).orElse(part.kind().strip().toLowerCase(Locale.ROOT));
    return Hashes.mix(Hashes.of(name), Hashes.of(String.join("|", words)));
  }

  long value(Part part, Optional<Kind> kind) {
    String quantity = kind.map(known -> known.quantity().name()).orElse("NONE");
    return values.computeIfAbsent(
        quantity + "\n" + part.value(), key -> read(part.value(), quantity));
  }

  private static long read(String text, String quantity) {
    Optional<Quantity> expected = quantity(quantity);
    if (expected.isPresent()) {
      MarkingReadings<ValueReading> readings = ComponentValues.read(text, expected.get());
      if (readings.outcome() == MarkingReadings.Outcome.READ && readings.first().isPresent()) {
        double amount = readings.first().get().amount().value();
        // seven digits: 4.7k and 4700 may differ in the last bits
        return Hashes.of(String.format(Locale.ROOT, "%.6e", amount));
      }
    }
    return Hashes.of(text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " "));
  }

  private static Optional<Quantity> quantity(String word) {
    return switch (word) {
      case "OHM" -> Optional.of(Quantity.RESISTANCE);
      case "FARAD" -> Optional.of(Quantity.CAPACITANCE);
      case "HENRY" -> Optional.of(Quantity.INDUCTANCE);
      default -> Optional.empty();
    };
  }

  /** One number for each role; a pin of no known role is known by its number. */
  int roleNumber(Terminal pin) {
    return roles.computeIfAbsent(role(pin), word -> roles.size() + 1);
  }

  private static String role(Terminal pin) {
    return pin.role().isEmpty() ? "pin " + pin.number() : pin.role().toLowerCase(Locale.ROOT);
  }
}
