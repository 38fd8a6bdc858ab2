package org.relegend.marking;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Thermistors that limit the inrush: "10D-9" is 10 Ω at 25 °C on a disc of 9 mm (data sheets, from
 * memory). Others are written as resistors are.
 */
final class ThermistorMark implements MarkForm {
  private static final Pattern INRUSH =
      Pattern.compile("(?:NTC ?)?(?<ohms>[0-9]{1,3}(?:\\.[0-9])?)(?<disc>D-?[0-9]{1,2})");

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    Matcher matcher = INRUSH.matcher(text);
    if (!context.is(PartClass.THERMISTOR) || !matcher.matches()) {
      return Optional.empty();
    }
    Amount ohms = new Amount(Quantity.RESISTANCE, Double.parseDouble(matcher.group("ohms")));
    String why = "ohms at 25 °C and the disc, as data sheets mark them (from memory)";
    ValueReading plain = new ValueReading(ohms, Optional.empty(), List.of(), List.of(), why);
    MarkTrait disc = MarkTrait.of("disc", matcher.group("disc"), "diameter in millimetres");
    return Optional.of(MarkingReadings.read(List.of(plain.with(List.of(disc), ""))));
  }
}
