package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * E for ohms or in place of the point, as "470E" and "4E7" (common practice; many typewriters had
 * no Ω). "1E3" is a power of ten too, and a chip's "10E" a code of EIA-96: those keep both
 * readings.
 */
final class OhmLetterE implements MarkForm {
  private static final Pattern LETTER =
      Pattern.compile("(?<before>[0-9]{1,4})E(?<after>[0-9]{0,3})(?<rest>[FGJKM]?(?: .*)?)");

  private static final Pattern POWER =
      Pattern.compile("(?<digits>[1-9][0-9]{0,3})[eE](?<power>[0-9]|10)");

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    if (!context.open() && context.quantity().get() != Quantity.RESISTANCE) {
      return Optional.empty();
    }
    List<ValueReading> readings = new ArrayList<>();
    Matcher letter = LETTER.matcher(text);
    if (letter.matches()) {
      String plain = letter.group("before") + "R" + letter.group("after") + letter.group("rest");
      ValueParts.of(plain, Optional.of(Quantity.RESISTANCE)).readings().readings().stream()
          .filter(each -> each.amount().quantity() == Quantity.RESISTANCE)
          .forEach(
              each -> readings.add(each.with(List.of(), "E stands for ohms (common practice)")));
    }
    Matcher power = POWER.matcher(text);
    if (power.matches()) {
      double ohms =
          DecimalParser.value(
              Long.parseLong(power.group("digits")), Integer.parseInt(power.group("power")));
      String why = "E as a power of ten (common practice)";
      Amount amount = new Amount(Quantity.RESISTANCE, ohms);
      readings.add(new ValueReading(amount, Optional.empty(), List.of(), List.of(), why));
    }
    readings.addAll(ChipCode.readings(text, context));
    return readings.isEmpty() ? Optional.empty() : Optional.of(MarkingReadings.read(readings));
  }
}
