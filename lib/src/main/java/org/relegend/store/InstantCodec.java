package org.relegend.store;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import org.relegend.map.NameRules;

/**
 * Moments as 2026-03-04T12:00:00Z (RFC 3339, always in UTC and to the second). The general parser
 * of the platform takes 20 times as long, and a large map holds 100,000 of them.
 */
final class InstantCodec {
  private static final String PATTERN = "dddd-dd-ddTdd:dd:ddZ";

  private InstantCodec() {}

  /**
   * Reads such a moment.
   *
   * @throws IllegalArgumentException where the text is not exactly so
   */
  static Instant parse(String text) {
    if (!fits(text)) {
      throw unfit(text);
    }
    int hour = number(text, 11, 13);
    int minute = number(text, 14, 16);
    int second = number(text, 17, 19);
    if (hour > 23 || minute > 59 || second > 59) {
      throw unfit(text);
    }
    try {
      long day =
          LocalDate.of(number(text, 0, 4), number(text, 5, 7), number(text, 8, 10)).toEpochDay();
      return Instant.ofEpochSecond(day * 86_400 + hour * 3_600L + minute * 60L + second);
    } catch (DateTimeException e) {
      throw unfit(text);
    }
  }

  private static boolean fits(String text) {
    if (text.length() != PATTERN.length()) {
      return false;
    }
    for (int i = 0; i < text.length(); i++) {
      char wanted = PATTERN.charAt(i);
      char c = text.charAt(i);
      if (wanted == 'd' ? c < '0' || c > '9' : c != wanted) {
        return false;
      }
    }
    return true;
  }

  private static int number(String text, int from, int end) {
    int value = 0;
    for (int i = from; i < end; i++) {
      value = value * 10 + text.charAt(i) - '0';
    }
    return value;
  }

  private static IllegalArgumentException unfit(String text) {
    return new IllegalArgumentException(
        "\"%s\" is no moment: write it in UTC as 2026-03-04T12:00:00Z"
            .formatted(NameRules.printable(text)));
  }
}
