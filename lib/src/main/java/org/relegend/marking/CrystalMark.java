package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Crystals and resonators: bare numbers, which may be megahertz, kilohertz or hertz (common
 * practice), and the cycles of older drawings: "3.58MC", "100 kc/s".
 */
final class CrystalMark implements MarkForm {
  private static final Pattern CYCLES =
      Pattern.compile(
          "(?<number>[0-9]{1,6}(?:[.,][0-9]{1,7})?) ?(?<prefix>[kKM])[cC](?:/[sS]|PS|ps)?");

  /** Overtone crystals end at some 200 MHz (makers' lists, from memory). */
  private static final double HIGHEST = 200e6;

  /** Tuning forks and bars begin at some 1 kHz (common practice). */
  private static final double LOWEST = 1e3;

  @Override
  public Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    if (!context.may(PartClass.CRYSTAL)) {
      return Optional.empty();
    }
    Matcher cycles = CYCLES.matcher(text);
    if (cycles.matches()) {
      String hertz = cycles.group("number") + cycles.group("prefix") + "Hz";
      return Optional.of(ValueParts.of(hertz, context.quantity()).readings());
    }
    return Numeral.at(text, 0).filter(number -> number.all(text)).map(CrystalMark::bare);
  }

  private static MarkingReadings<ValueReading> bare(Numeral number) {
    List<ValueReading> readings = new ArrayList<>();
    int[] exponents =
        number.wholeOnly() && number.digits() >= 1000 ? new int[] {0, 3} : new int[] {6, 3};
    for (int exponent : exponents) {
      double hertz = number.times(exponent);
      if (hertz >= LOWEST && hertz <= HIGHEST) {
        String unit = exponent == 6 ? "MHz" : exponent == 3 ? "kHz" : "Hz";
        String why = "a bare number, taken in " + unit + " (common practice)";
        Amount amount = new Amount(Quantity.FREQUENCY, hertz);
        readings.add(new ValueReading(amount, Optional.empty(), List.of(), List.of(), why));
      }
    }
    return readings.isEmpty()
        ? MarkingReadings.malformed(
            "No crystal has such a number. Write its unit: 32.768 kHz, 4 MHz.")
        : MarkingReadings.read(readings);
  }
}
