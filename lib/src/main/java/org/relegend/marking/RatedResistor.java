package org.relegend.marking;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Resistors with their watts before the value and run on: "5W10RJ", "10W0R22K" (common practice).
 */
final class RatedResistor implements MarkForm {
  private static final Pattern WATTS =
      Pattern.compile("(?<watts>[0-9]{1,2})W ?(?<value>[0-9]*[RKkMΩ].*)");

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    Matcher matcher = WATTS.matcher(text);
    if (!context.mayOrOpen(PartClass.RESISTOR) || !matcher.matches()) {
      return Optional.empty();
    }
    String parted = matcher.group("value") + " " + matcher.group("watts") + "W";
    return Optional.of(ValueParts.of(parted, Optional.of(Quantity.RESISTANCE)).readings());
  }
}
