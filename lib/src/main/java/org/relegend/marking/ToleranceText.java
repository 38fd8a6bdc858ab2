package org.relegend.marking;

import java.util.Optional;

/** Reads a tolerance written out: "5%", "±0.5pF", "+/-10%", "-20+80%", "+80/-20%". */
final class ToleranceText {
  private ToleranceText() {}

  static Optional<Tolerance> read(String token) {
    if (token.endsWith("%")) {
      return percent(token.substring(0, token.length() - 1));
    }
    if (token.startsWith("±") && (token.endsWith("pF") || token.endsWith("p"))) {
      String digits = token.substring(1, token.lastIndexOf('p'));
      return whole(digits, -12).map(Tolerance::absolute);
    }
    return Optional.empty();
  }

  private static Optional<Tolerance> percent(String text) {
    for (String sign : new String[] {"±", "+/-", "+-", "-/+"}) {
      if (text.startsWith(sign)) {
        return whole(text.substring(sign.length()), -2).map(Tolerance::fraction);
      }
    }
    int second = Math.max(text.lastIndexOf('+'), text.lastIndexOf('-'));
    if (second <= 0) {
      return second == 0 ? Optional.empty() : whole(text, -2).map(Tolerance::fraction);
    }
    boolean lowFirst = text.charAt(0) == '-' && text.charAt(second) == '+';
    boolean highFirst = text.charAt(0) == '+' && text.charAt(second) == '-';
    int firstEnd =
        text.charAt(second - 1) == '/' || text.charAt(second - 1) == '%' ? second - 1 : second;
    Optional<Double> first = whole(text.substring(1, Math.max(1, firstEnd)), -2);
    Optional<Double> last = whole(text.substring(second + 1), -2);
    if (!(lowFirst || highFirst) || first.isEmpty() || last.isEmpty()) {
      return Optional.empty();
    }
    double low = lowFirst ? first.get() : last.get();
    double high = lowFirst ? last.get() : first.get();
    return Optional.of(new Tolerance(-low, high, Tolerance.Basis.FRACTION));
  }

  private static Optional<Double> whole(String digits, int exponent) {
    return Numeral.at(digits, 0)
        .filter(number -> number.all(digits))
        .map(number -> number.times(exponent));
  }
}
