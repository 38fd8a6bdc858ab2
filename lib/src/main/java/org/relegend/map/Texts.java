package org.relegend.map;

/** What may stand as free text in a map. */
final class Texts {
  /** Longest note taken, in characters. */
  static final int MAX_NOTE = 20_000;

  private Texts() {}

  /** One line of free text, perhaps empty. */
  static String line(String what, String text) {
    if (!text.isEmpty()) {
      Names.checked(what, text.replace('"', '\''));
    }
    return text;
  }

  /** Free text of several lines. */
  static String note(String text) {
    if (text.length() > MAX_NOTE) {
      throw new IllegalArgumentException(
          "a note has at most %,d characters, this one has %,d".formatted(MAX_NOTE, text.length()));
    }
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      if (isRefused(c)) {
        throw new IllegalArgumentException("a note can't hold U+%04X".formatted(c));
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
