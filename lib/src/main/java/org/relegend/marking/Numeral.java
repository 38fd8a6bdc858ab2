package org.relegend.marking;

import java.util.Optional;

/**
 * A decimal number at some place of a text: digits times ten to the minus places.
 *
 * @param end index after its last character
 * @param figures how many digits are written, leading zeros counted
 * @param wholeOnly no point or comma in it
 * @param maybeGrouped written like "4,700", which is 4.7 with a decimal comma or 4700 with a
 *     thousands comma
 */
record Numeral(
    long digits, int places, int end, int figures, boolean wholeOnly, boolean maybeGrouped) {
  /** More figures than any part or meter shows; also keeps the digits exact in a double. */
  static final int MOST_FIGURES = 15;

  /** The number that starts at this place; empty if none does or its points and commas clash. */
  static Optional<Numeral> at(String text, int start) {
    int end = start;
    int marks = 0;
    while (end < text.length() && (digit(text, end) || (mark(text, end) && digit(text, end + 1)))) {
      marks += mark(text, end) ? 1 : 0;
      end++;
    }
    int figures = end - start - marks;
    if (end == start || figures > MOST_FIGURES) {
      return Optional.empty();
    }
    if (marks == 0) {
      return Optional.of(new Numeral(digits(text, start, end), 0, end, figures, true, false));
    }
    int last = Math.max(text.lastIndexOf('.', end - 1), text.lastIndexOf(',', end - 1));
    if (marks == 1) {
      boolean grouped = text.charAt(last) == ',' && groups(text, start, end);
      return Optional.of(
          new Numeral(digits(text, start, end), end - last - 1, end, figures, false, grouped));
    }
    return thousands(text, start, last, end, figures);
  }

  /** "1,234.5", "1.234,5" or "1,234,567": the marks before the last part thousands. */
  private static Optional<Numeral> thousands(
      String text, int start, int last, int end, int figures) {
    char mark = text.charAt(firstMark(text, start));
    boolean pointed = text.charAt(last) != mark;
    int wholeEnd = pointed ? last : end;
    if (!groups(text, start, wholeEnd)
        || text.substring(start, wholeEnd).indexOf(other(mark)) >= 0) {
      return Optional.empty();
    }
    int places = pointed ? end - last - 1 : 0;
    return Optional.of(new Numeral(digits(text, start, end), places, end, figures, false, false));
  }

  /** Nothing, as stands before the letter in "R47". */
  static final Numeral NOTHING = new Numeral(0, 0, 0, 0, true, false);

  /** This before a letter that stands in place of the point, and those digits behind it. */
  Optional<Numeral> pointed(Numeral behind) {
    int all = figures + behind.figures;
    if (!wholeOnly || !behind.wholeOnly || all > MOST_FIGURES) {
      return Optional.empty();
    }
    long joined = digits;
    for (int i = 0; i < behind.figures; i++) {
      joined *= 10;
    }
    return Optional.of(
        new Numeral(joined + behind.digits, behind.figures, behind.end, all, false, false));
  }

  /** The same characters read with the comma as thousands mark. */
  Numeral grouped() {
    return new Numeral(digits, 0, end, figures, false, false);
  }

  /** Whether nothing follows the number in its text. */
  boolean all(String text) {
    return end == text.length();
  }

  /** The number times ten to the exponent. */
  double times(int exponent) {
    return DecimalParser.value(digits, exponent - places);
  }

  private static int firstMark(String text, int start) {
    int at = start;
    while (!mark(text, at)) {
      at++;
    }
    return at;
  }

  private static char other(char mark) {
    return mark == '.' ? ',' : '.';
  }

  /** One to three digits, the first no zero, then groups of exactly three. */
  private static boolean groups(String text, int start, int end) {
    if (text.charAt(start) == '0' || !digit(text, start)) {
      return false;
    }
    int run = 0;
    boolean first = true;
    for (int at = start; at <= end; at++) {
      if (at < end && digit(text, at)) {
        run++;
        continue;
      }
      if (first ? run > 3 : run != 3) {
        return false;
      }
      first = false;
      run = 0;
    }
    return true;
  }

  private static long digits(String text, int start, int end) {
    long value = 0;
    for (int at = start; at < end; at++) {
      if (digit(text, at)) {
        value = value * 10 + (text.charAt(at) - '0');
      }
    }
    return value;
  }

  static boolean digit(String text, int at) {
    return at >= 0 && at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9';
  }

  private static boolean mark(String text, int at) {
    return at < text.length() && (text.charAt(at) == '.' || text.charAt(at) == ',');
  }
}
