package org.relegend.map;

/** What may stand as free text in a map. */
public final class TextRules {
  /** Longest note taken, in characters. */
  static final int MAX_NOTE = 20_000;

  private TextRules() {}

  /** One line of free text, perhaps empty. */
  public static String line(String what, String text) {
    if (!text.isEmpty()) {
      NameRules.checked(what, text.replace('"', '\''));
    }
    return text;
  }

  /** Free text of several lines. */
  public static String note(String text) {
    return note("note", text, MAX_NOTE);
  }

  /** Text of several lines, up to some length. */
  static String note(String what, String text, int most) {
    if (text.length() > most) {
      throw new IllegalArgumentException(
          "a %s has at most %,d characters, this one has %,d".formatted(what, most, text.length()));
    }
    if (NameRules.beginsAsAPage(text)) {
      throw new IllegalArgumentException("a %s can't begin as a web page does".formatted(what));
    }
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      if (isRefused(c)) {
        throw new IllegalArgumentException("a %s can't hold U+%04X".formatted(what, c));
      }
      i += Character.charCount(c);
    }
    return text;
  }

  /** Control characters, and halves of characters, which no file can hold. */
  private static boolean isRefused(int c) {
    return Character.isISOControl(c) && c != '\n' && c != '\t'
        || Character.getType(c) == Character.SURROGATE;
  }
}
