package org.relegend.marking;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Working volts as older lists abbreviate them: "25WV", "450VW", "25WVDC" (common practice). */
final class WorkingVolts implements MarkForm {
  private static final Pattern ABBREVIATED =
      Pattern.compile("(?<volts>[0-9]{1,5}) ?(?:WVDC|VDCW|DCWV|(?<plain>WV|VW))\\b");

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    Matcher matcher = ABBREVIATED.matcher(text);
    if (!context.mayOrOpen(PartClass.CAPACITOR) || !matcher.find()) {
      return Optional.empty();
    }
    String unit = matcher.group("plain") == null ? "VDC" : "V";
    String written =
        text.substring(0, matcher.start())
            + matcher.group("volts")
            + unit
            + text.substring(matcher.end());
    return Optional.of(ValueParts.of(written, context.quantity()).readings());
  }
}
