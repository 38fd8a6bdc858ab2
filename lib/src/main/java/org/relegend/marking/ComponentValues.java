package org.relegend.marking;

import java.util.ArrayList;
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
  public static MarkingReadings<ValueReading> read(String text) {
    return read(text, MarkContext.NOTHING);
  }

  /** Every reading, for a part whose value is of this quantity. */
  public static MarkingReadings<ValueReading> read(String text, Quantity expected) {
    return read(text, MarkContext.of(expected));
  }

  /** Every reading, for a part of this class. */
  public static MarkingReadings<ValueReading> read(String text, PartClass part) {
    return read(text, MarkContext.of(part));
  }

  private static MarkingReadings<ValueReading> read(String raw, MarkContext context) {
    String fault = MarkingText.fault(raw);
    if (!fault.isEmpty()) {
      return MarkingReadings.malformed(fault);
    }
    String text = MarkingText.plain(raw);
    return text.isEmpty()
        ? MarkingReadings.noValue("No value is written.")
        : MarkForms.read(text, context)
            .map(read -> checked(text, read, context))
            .orElseGet(() -> plain(text, context));
  }

  /** What a form read, which may be of another quantity than is expected. */
  private static MarkingReadings<ValueReading> checked(
      String text, MarkingReadings<ValueReading> read, MarkContext context) {
    return read.outcome() == MarkingReadings.Outcome.READ
        ? answered(text, read.readings(), context.quantity())
        : read;
  }

  /** Colours, or a value with its ratings. */
  private static MarkingReadings<ValueReading> plain(String text, MarkContext context) {
    List<BandColour> colours = BandColour.list(text);
    if (colours.isEmpty()) {
      return written(text, context);
    }
    MarkingReadings<BandReading> bands = ColourBands.read(colours);
    if (bands.readings().isEmpty()) {
      return MarkingReadings.malformed(bands.reason());
    }
    List<ValueReading> readings = bands.readings().stream().map(BandReading::value).toList();
    return answered(text, readings, context.quantity());
  }

  private static MarkingReadings<ValueReading> written(String text, MarkContext context) {
    MarkingReadings<ValueReading> plain = ValueParts.of(text, context.quantity()).readings();
    List<ValueReading> chip = ChipCode.readings(text, context);
    if (chip.isEmpty()) {
      return plain;
    }
    List<ValueReading> all = new ArrayList<>();
    if (plain.outcome() == MarkingReadings.Outcome.READ) {
      all.addAll(plain.readings());
    }
    all.addAll(chip);
    return MarkingReadings.read(all);
  }

  /** The readings, told apart by whether they are of the expected quantity. */
  static MarkingReadings<ValueReading> answered(
      String text, List<ValueReading> readings, Optional<Quantity> expected) {
    Quantity found = readings.get(0).amount().quantity();
    if (expected.isEmpty() || expected.get() == found) {
      return MarkingReadings.read(readings);
    }
    String reason =
        "%s reads as %s (%s), where %s is expected. Correct the value or the kind of the part."
            .formatted(
                MarkingText.quoted(text),
                readings.get(0).amount().text(),
                found.label(),
                expected.get().label());
    return MarkingReadings.other(readings, reason);
  }
}
