package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Digits without unit or prefix letter. What they mean hangs on the part: "104" is 100 nF on a
 * capacitor, 104 Ω on a drawing and 100 kΩ on a chip resistor.
 */
final class DigitCode {
  private static final int PICO = -12;
  private static final int MICRO = -6;
  private static final int MILLI = -3;

  /** A bare 7815 is no voltage. */
  private static final int MOST_FIGURES_OF_VOLTS = 3;

  private DigitCode() {}

  /** Each meaning of digits with nothing behind them. */
  static List<TokenMeaning> alone(Numeral number) {
    List<TokenMeaning> found = new ArrayList<>();
    found.add(plain(number, Quantity.RESISTANCE, 0, false));
    chipResistor(number, false, found);
    capacitor(number, false, found);
    if (!smallFraction(number)) {
      found.add(plain(number, Quantity.CAPACITANCE, MICRO, true));
    }
    if (threeDigits(number)) {
      found.add(code(number, Quantity.INDUCTANCE, MICRO, true));
    }
    found.add(plain(number, Quantity.INDUCTANCE, MICRO, true));
    found.add(plain(number, Quantity.INDUCTANCE, MILLI, true));
    if (!number.wholeOnly() || number.figures() <= MOST_FIGURES_OF_VOLTS) {
      found.add(plain(number, Quantity.VOLTAGE, 0, true));
    }
    found.add(plain(number, Quantity.CURRENT, 0, true));
    found.add(plain(number, Quantity.POWER, 0, true));
    found.add(plain(number, Quantity.FREQUENCY, 0, true));
    return found;
  }

  /**
   * Each meaning of digits followed by a tolerance letter, as 104K, 474J or 47J.
   *
   * @param expected whether they count only where their quantity is expected
   */
  static List<TokenMeaning> withLetter(Numeral number, ToleranceLetter letter, boolean expected) {
    List<TokenMeaning> plain = new ArrayList<>();
    capacitor(number, expected, plain);
    chipResistor(number, true, plain);
    if (threeDigits(number)) {
      plain.add(code(number, Quantity.INDUCTANCE, MICRO, true));
    }
    plain.add(plain(number, Quantity.INDUCTANCE, MICRO, true));
    List<TokenMeaning> found = new ArrayList<>();
    plain.forEach(candidate -> TokenMeaning.withLetter(candidate, letter, found));
    return found;
  }

  private static void chipResistor(Numeral number, boolean expected, List<TokenMeaning> into) {
    if (number.wholeOnly() && number.digits() > 0 && (threeDigits(number) || fourDigits(number))) {
      into.add(code(number, Quantity.RESISTANCE, 0, expected));
    }
  }

  private static void capacitor(Numeral number, boolean expected, List<TokenMeaning> into) {
    if (threeDigits(number)) {
      into.add(code(number, Quantity.CAPACITANCE, PICO, expected));
    }
    if (smallFraction(number)) {
      into.add(plain(number, Quantity.CAPACITANCE, MICRO, expected));
    }
    into.add(plain(number, Quantity.CAPACITANCE, PICO, expected));
  }

  private static boolean threeDigits(Numeral number) {
    return number.wholeOnly() && number.figures() == 3 && number.digits() >= 100;
  }

  private static boolean fourDigits(Numeral number) {
    return number.wholeOnly() && number.figures() == 4 && number.digits() >= 1000;
  }

  /** Below 1 and no zero: 0.047 on an older drawing. */
  private static boolean smallFraction(Numeral number) {
    return number.digits() > 0 && number.times(0) < 1;
  }

  private static TokenMeaning plain(
      Numeral number, Quantity quantity, int exponent, boolean expected) {
    Amount amount = new Amount(quantity, number.times(exponent));
    String unit =
        switch (exponent) {
          case PICO -> "p";
          case MICRO -> "µ";
          case MILLI -> "m";
          default -> "";
        };
    String why = "a plain number, taken in " + unit + quantity.unit() + " (common practice)";
    return new TokenMeaning(amount, Optional.empty(), expected, why);
  }

  /** The last digit counts the zeros, from the unit that the exponent tells. */
  private static TokenMeaning code(
      Numeral number, Quantity quantity, int exponent, boolean expected) {
    int last = (int) (number.digits() % 10);
    // on capacitors 8 and 9 stand for 0.01 and 0.1 (EIA, from memory)
    int zeros = quantity == Quantity.CAPACITANCE && last >= 8 ? last - 10 : last;
    double value = DecimalParser.value(number.digits() / 10, zeros + exponent);
    String unit =
        switch (quantity) {
          case CAPACITANCE -> "capacitor code in pF";
          case INDUCTANCE -> "inductor code in µH (common practice)";
          default -> "chip resistor code in Ω (common practice)";
        };
    String why = unit + ": the last digit counts the zeros";
    return new TokenMeaning(new Amount(quantity, value), Optional.empty(), expected, why);
  }
}
