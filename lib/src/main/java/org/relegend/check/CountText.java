package org.relegend.check;

import java.util.Locale;

/** Counting in sentences. */
final class CountText {
  private CountText() {}

  /** "1 part", "2 parts". */
  static String count(int number, String one) {
    return "%s %s%s".formatted(number(number), one, number == 1 ? "" : "s");
  }

  /** The first where there is one, the second where there are several: "has", "have". */
  static String verb(int number, String one, String several) {
    return number == 1 ? one : several;
  }

  /** A count, thousands divided by commas wherever the program runs. */
  static String number(int count) {
    return String.format(Locale.ROOT, "%,d", count);
  }

  /** A coordinate, without decimals where it has none. */
  static String number(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e9
        ? Long.toString((long) value)
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
