package org.relegend.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Splits a part's value text into tokens and joins again what belongs together: "275 V", "5 %". */
final class ValueText {
  private static final String SEPARATORS = " ;:|()[]@\"";

  private static final Set<String> OHMS = Set.of("Ω", "ohm", "ohms", "Ohm", "Ohms", "OHM", "OHMS");

  private ValueText() {}

  /** The tokens of a text that has been through {@link MarkingText#plain}. */
  static List<String> tokens(String text) {
    List<String> tokens = new ArrayList<>();
    int start = 0;
    for (int at = 0; at <= text.length(); at++) {
      boolean sign = at < text.length() && text.charAt(at) == '±';
      if (at == text.length() || separates(text, at) || sign) {
        if (at > start) {
          join(tokens, withoutEndMark(text.substring(start, at)));
        }
        start = sign ? at : at + 1;
      }
    }
    return tokens;
  }

  private static boolean separates(String text, int at) {
    char c = text.charAt(at);
    return switch (c) {
      case ',' -> !Numeral.digit(text, at + 1) || (at > 0 && !decimalBefore(text, at));
      case '/' -> !slashBelongs(text, at);
      default -> SEPARATORS.indexOf(c) >= 0;
    };
  }

  private static boolean decimalBefore(String text, int comma) {
    return Numeral.digit(text, comma - 1) || text.charAt(comma - 1) == ' ';
  }

  /** The slash of "+/-5%", "+80/-20%" and "1/4W" parts nothing. */
  private static boolean slashBelongs(String text, int at) {
    if (at == 0 || at + 1 == text.length()) {
      return false;
    }
    char before = text.charAt(at - 1);
    char after = text.charAt(at + 1);
    return before == '+' || after == '-' || after == '+' || fractionOfWatt(text, at);
  }

  /** One figure over others before a W: "1/4W" but not "4k7/2W". */
  private static boolean fractionOfWatt(String text, int slash) {
    boolean oneFigure =
        Numeral.digit(text, slash - 1) && (slash == 1 || text.charAt(slash - 2) == ' ');
    int end = slash + 1;
    while (Numeral.digit(text, end)) {
      end++;
    }
    boolean figures = end > slash + 1;
    while (end < text.length() && text.charAt(end) == ' ') {
      end++;
    }
    boolean watts = end < text.length() && (text.charAt(end) == 'W' || text.charAt(end) == 'w');
    return oneFigure && figures && watts;
  }

  private static String withoutEndMark(String token) {
    char last = token.charAt(token.length() - 1);
    return last == '.' || last == ',' ? token.substring(0, token.length() - 1) : token;
  }

  private static void join(List<String> tokens, String token) {
    if (token.isEmpty()) {
      return;
    }
    int last = tokens.size() - 1;
    if (last >= 0 && belongs(tokens.get(last), token)) {
      tokens.set(last, tokens.get(last) + token);
    } else {
      tokens.add(token);
    }
  }

  private static boolean belongs(String before, String token) {
    if (before.equals("±")) {
      return Numeral.digit(token, 0);
    }
    if (!ValueToken.startsNumber(before)) {
      return false;
    }
    if (token.equals("%")) {
      return true;
    }
    if (before.charAt(0) == '-' && token.charAt(0) == '+') {
      return true; // -20 +80%
    }
    if (OHMS.contains(token)) {
      return true; // 4k7 Ω
    }
    if (UnitOfMeasure.of(token).isEmpty()) {
      return false;
    }
    char end = before.charAt(before.length() - 1);
    boolean prefixed = "pnuµm".indexOf(end) >= 0 && !UnitOfMeasure.of(end + token).isEmpty();
    return prefixed || allNumber(before);
  }

  /** Whether it is all number, sign and fraction allowed: "4.7", "1/4". */
  private static boolean allNumber(String token) {
    for (int at = 0; at < token.length(); at++) {
      boolean sign = at == 0 && "+-±".indexOf(token.charAt(0)) >= 0;
      if (!sign && !Numeral.digit(token, at) && ".,/".indexOf(token.charAt(at)) < 0) {
        return false;
      }
    }
    return true;
  }
}
