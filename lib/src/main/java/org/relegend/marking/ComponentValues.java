package org.relegend.marking;

import java.util.List;
import java.util.Optional;

/**
 * Reads the value text of a part as technicians and parts lists write it: "4k7 0.5W", "104K", "220u
 * 25V", "0R47", "47p polystyrene", "4,7k ±5%", "brown black red gold".
 *
 * <p>The codes are those of IEC 60062; what goes beyond the standard says so in the reading. Works
 * in time linear in the text and refuses texts of more than 200 characters unread.
 */
public final class ComponentValues {
  private ComponentValues() {}

  /** Every reading, when nothing is known about the part. */
  public static Readings<ValueReading> read(String text) {
    return read(text, Optional.empty());
  }

  /** Every reading, for a part whose value is of this quantity. */
  public static Readings<ValueReading> read(String text, Quantity expected) {
    return read(text, Optional.of(expected));
  }

  private static Readings<ValueReading> read(String raw, Optional<Quantity> expected) {
    String fault = Texts.fault(raw);
    if (!fault.isEmpty()) {
      return Readings.malformed(fault);
    }
    String text = Texts.plain(raw);
    if (text.isEmpty()) {
      return Readings.noValue("No value is written.");
    }
    Optional<ValueReading> can = sections(text, expected);
    if (can.isPresent()) {
      return answered(text, List.of(can.get()), expected);
    }
    List<BandColour> colours = BandColour.list(text);
    if (colours.isEmpty()) {
      return ValueParts.of(text, expected).readings();
    }
    Readings<BandReading> bands = ColourBands.read(colours);
    if (bands.readings().isEmpty()) {
      return Readings.malformed(bands.reason());
    }
    List<ValueReading> readings = bands.readings().stream().map(BandReading::value).toList();
    return answered(text, readings, expected);
  }

  /** Several sections in one can; a capacitor's alone, since "2x10k" is no can. */
  private static Optional<ValueReading> sections(String text, Optional<Quantity> expected) {
    boolean capacitor = expected.isPresent() && expected.get() == Quantity.CAPACITANCE;
    return capacitor ? CapacitorSections.reading(text) : Optional.empty();
  }

  /** The readings, told apart by whether they are of the expected quantity. */
  static Readings<ValueReading> answered(
      String text, List<ValueReading> readings, Optional<Quantity> expected) {
    Quantity found = readings.get(0).amount().quantity();
    if (expected.isEmpty() || expected.get() == found) {
      return Readings.read(readings);
    }
    String reason =
        "%s reads as %s (%s), where %s is expected. Correct the value or the kind of the part."
            .formatted(
                Texts.quoted(text),
                readings.get(0).amount().text(),
                found.label(),
                expected.get().label());
    return Readings.other(readings, reason);
  }
}
