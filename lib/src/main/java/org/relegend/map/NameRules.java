package org.relegend.map;

import java.util.Comparator;

/** What may stand as a name in a map, and the order names are listed in. */
public final class NameRules {
  /** Longest name taken, in characters: longer than any printed one, short enough for a screen. */
  public static final int MAX_LENGTH = 120;

  /** Numbers inside names compare as numbers: R2 comes before R10. */
  public static final Comparator<String> NATURAL = NameRules::compareNatural;

  private static final String PAGE = "<html>";

  private NameRules() {}

  /**
   * Whether a window would take the text for a web page and fetch its pictures from the net: a map
   * that somebody else made must not do that.
   */
  static boolean beginsAsAPage(String text) {
    return text.regionMatches(true, 0, PAGE, 0, PAGE.length());
  }

  /**
   * The text itself if it may be a name.
   *
   * @param what the thing named, for the message: "net name"
   * @throws IllegalArgumentException where it is empty, too long, begins or ends with a space,
   *     begins as a web page does, or holds a quotation mark, a control character or a mark that
   *     changes the writing direction
   */
  public static String checked(String what, String text) {
    if (text.isEmpty()) {
      throw new IllegalArgumentException("a " + what + " can't be empty");
    }
    if (text.length() > MAX_LENGTH) {
      throw new IllegalArgumentException(
          "a %s has at most %d characters, this one has %d"
              .formatted(what, MAX_LENGTH, text.length()));
    }
    if (!text.strip().equals(text)) {
      throw new IllegalArgumentException(
          "the %s \"%s\" begins or ends with a space".formatted(what, printable(text)));
    }
    if (beginsAsAPage(text)) {
      throw new IllegalArgumentException(
          "the %s \"%s\" begins with %s, which no name may"
              .formatted(what, printable(text), text.substring(0, PAGE.length())));
    }
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      if (isRefused(c)) {
        throw new IllegalArgumentException(
            "the %s \"%s\" holds %s, which no name may have"
                .formatted(what, printable(text), describe(c)));
      }
      i += Character.charCount(c);
    }
    return text;
  }

  /**
   * As {@link #checked}, and no slash, backslash, dot or space either: it is used inside others.
   */
  public static String checkedToken(String what, String text) {
    checked(what, text);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '/' || c == '\\' || c == '.' || c == ':' || Character.isWhitespace(c)) {
        throw new IllegalArgumentException(
            "the %s \"%s\" holds %s, which it may not have".formatted(what, text, describe(c)));
      }
    }
    return text;
  }

  /**
   * The text, cut at {@link #MAX_LENGTH}, with every mark spelt out that could upset a terminal.
   */
  public static String printable(String text) {
    return text.length() > MAX_LENGTH
        ? spelledOut(text.substring(0, MAX_LENGTH)) + "…"
        : spelledOut(text);
  }

  /** The text with every mark spelt out that could upset a terminal or a line of a report. */
  public static String spelledOut(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (isRefused(c) && c != '"') {
                out.append("<U+%04X>".formatted(c));
              } else {
                out.appendCodePoint(c);
              }
            });
    return out.toString();
  }

  private static boolean isRefused(int c) {
    if (c >= ' ' && c <= '~') {
      return c == '"'; // nearly all names: no need of the tables
    }
    int type = Character.getType(c);
    return Character.isISOControl(c)
        || type == Character.FORMAT
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR
        || type == Character.SURROGATE
        || type == Character.UNASSIGNED;
  }

  private static String describe(int c) {
    return switch (c) {
      case '"' -> "a quotation mark";
      case '\n', '\r' -> "a line break";
      case '\t' -> "a tab";
      case '/' -> "a slash";
      case '\\' -> "a backslash";
      case '.' -> "a dot";
      case ':' -> "a colon";
      case ' ' -> "a space";
      default -> "the character U+%04X".formatted(c);
    };
  }

  private static int compareNatural(String a, String b) {
    int i = 0;
    int j = 0;
    while (i < a.length() && j < b.length()) {
      char x = a.charAt(i);
      char y = b.charAt(j);
      if (isDigit(x) && isDigit(y)) {
        int endX = endOfDigits(a, i);
        int endY = endOfDigits(b, j);
        int order = compareDigits(a, i, endX, b, j, endY);
        if (order != 0) {
          return order;
        }
        i = endX;
        j = endY;
      } else if (x != y) {
        return Character.compare(x, y);
      } else {
        i++;
        j++;
      }
    }
    int rest = Integer.compare(a.length() - i, b.length() - j);
    return rest != 0 ? rest : a.compareTo(b);
  }

  private static int compareDigits(String a, int i, int endA, String b, int j, int endB) {
    int startA = skipZeros(a, i, endA);
    int startB = skipZeros(b, j, endB);
    int order = Integer.compare(endA - startA, endB - startB);
    for (int k = 0; order == 0 && startA + k < endA; k++) {
      order = Character.compare(a.charAt(startA + k), b.charAt(startB + k));
    }
    return order;
  }

  private static int skipZeros(String text, int from, int end) {
    int i = from;
    while (i < end - 1 && text.charAt(i) == '0') {
      i++;
    }
    return i;
  }

  private static int endOfDigits(String text, int from) {
    int i = from;
    while (i < text.length() && isDigit(text.charAt(i))) {
      i++;
    }
    return i;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
