package org.relegend.marking;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Fixed three-terminal regulators whose type tells the volts: 78xx positive, 79xx negative, with a
 * letter for the current between (common practice; data sheets).
 */
final class RegulatorType implements MarkForm {
  private static final Pattern TYPE =
      Pattern.compile(
          "(?:[A-Zuµ]{1,3})?(?<family>78|79)[LMSTH]?(?<volts>05|06|08|09|10|12|15|18|20|24)[A-Z]{0,3}");

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    Matcher matcher = TYPE.matcher(text);
    if (!context.may(PartClass.REGULATOR) || !matcher.matches()) {
      return Optional.empty();
    }
    int volts = Integer.parseInt(matcher.group("volts"));
    int sign = matcher.group("family").equals("78") ? 1 : -1;
    return Optional.of(
        MarkingReadings.read(
            List.of(
                new ValueReading(
                    new Amount(Quantity.VOLTAGE, sign * volts),
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    "type number of a fixed regulator (common practice)"))));
  }
}
