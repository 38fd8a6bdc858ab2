package org.relegend.marking;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Marks that look like a value and are as well a type number: of a part of unknown kind 7815, of a
 * thermistor R53. They are left unread, and the reason says what they can be.
 */
final class TypeNumberAlone implements MarkForm {
  /** The fixed regulators of the 78 and 79 families (data sheets, from memory). */
  private static final Pattern REGULATOR =
      Pattern.compile("7[89](?:05|06|08|09|10|12|15|18|20|24)");

  /** Glass bead thermistors of signal generators (makers' lists, from memory). */
  private static final Pattern BEAD = Pattern.compile("RA?[0-9]{2}");

  private static final Pattern DESIGNATOR = Pattern.compile("[RCLFDQ][0-9]{1,4}");

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    if (context.open() && REGULATOR.matcher(text).matches()) {
      return none(
          text,
          "can be the type of a regulator, a date or a number: the part's kind decides. Set it.");
    }
    if (context.is(PartClass.DIODE) && REGULATOR.matcher(text).matches()) {
      return none(text, "is the type of a regulator or a date, no diode's voltage.");
    }
    if (context.is(PartClass.THERMISTOR) && BEAD.matcher(text).matches()) {
      return none(text, "can be a bead's type as well as ohms: its data sheet decides.");
    }
    if (context.open() && DESIGNATOR.matcher(text).matches()) {
      return none(text, "reads as a part's name: the part's kind decides whether it is a value.");
    }
    return Optional.empty();
  }

  private static Optional<MarkingReadings<ValueReading>> none(String text, String why) {
    return Optional.of(MarkingReadings.noValue(MarkingText.quoted(text) + " " + why));
  }
}
