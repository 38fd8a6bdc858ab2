package org.relegend.marking;

/** What all readers here do to a text before they read it. */
final class MarkingText {
  /** Longer than anything printed on a part; beyond it nothing is looked at. */
  static final int LONGEST = 200;

  private static final int LONGEST_QUOTE = 40;

  private MarkingText() {}

  /** What is wrong with the text as a whole; empty if it can be read. */
  static String fault(String text) {
    if (text.length() > LONGEST) {
      return "The text has %d characters; a marking has at most %d. Shorten it to what is written on the part."
          .formatted(text.length(), LONGEST);
    }
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      boolean space = c == '\t' || c == '\n' || c == '\r';
      if (!space && (Character.isISOControl(c) || Character.getType(c) == Character.FORMAT)) {
        return "Character %d of the text is invisible (U+%04X). Delete it and type the text again."
            .formatted(at + 1, (int) c);
      }
    }
    return "";
  }

  /** One spelling for what looks alike: Ω, µ, minus, times, spaces; trimmed. */
  static String plain(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
        if (!groupMark(text, at)) {
          plain.append(' ');
        }
      } else {
        plain.append(
            switch (c) {
              case '\u2126' -> 'Ω';
              case '\u03BC' -> 'µ';
              case '\u2212', '\u2013' -> '-';
              case '\u00D7' -> 'x';
              default -> c;
            });
      }
    }
    return plain.toString().strip();
  }

  /** For messages: in quotation marks, cut short. */
  static String quoted(String text) {
    boolean longer = text.length() > LONGEST_QUOTE;
    return "“" + (longer ? text.substring(0, LONGEST_QUOTE) + "…" : text) + "”";
  }

  /**
   * A no-break or thin space with a digit before and three behind it parts thousands (ISO 80000-1).
   */
  private static boolean groupMark(String text, int at) {
    char c = text.charAt(at);
    return (c == '\u00A0' || c == '\u2009' || c == '\u202F')
        && Numeral.digit(text, at - 1)
        && Numeral.digit(text, at + 1)
        && Numeral.digit(text, at + 2)
        && Numeral.digit(text, at + 3)
        && !Numeral.digit(text, at + 4);
  }
}
