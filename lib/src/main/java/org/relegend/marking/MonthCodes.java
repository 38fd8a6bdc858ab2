package org.relegend.marking;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Dates that tell a month: "SEP 78", "9/78", "1978-09" (common practice), and the two characters of
 * IEC 60062 (date clause, from memory): a letter for the year in a cycle of twenty, 1 to 9, O, N or
 * D for the month.
 */
final class MonthCodes {
  private static final String NAMES =
      "JAN(?:UARY)?|FEB(?:RUARY)?|MAR(?:CH)?|APR(?:IL)?|MAY|MAI|JUNE?|JULY?|AUG(?:UST)?"
          + "|SEPT?(?:EMBER)?|O[CK]T(?:OBER)?|NOV(?:EMBER)?|DE[CZ](?:EMBER)?";

  private static final String YEAR = "(?<year>[0-9]{4}|'?[0-9]{2})";

  private static final List<Pattern> NAMED =
      List.of(
          Pattern.compile("(?<month>" + NAMES + ")\\.?[-/ ]?" + YEAR, Pattern.CASE_INSENSITIVE),
          Pattern.compile(YEAR + "[-/ ]?(?<month>" + NAMES + ")\\.?", Pattern.CASE_INSENSITIVE));

  private static final List<Pattern> NUMBERED =
      List.of(
          Pattern.compile("(?<month>0?[1-9]|1[0-2])[-/]" + YEAR),
          Pattern.compile(YEAR + "[-/](?<month>0[1-9]|1[0-2])"));

  private static final Pattern LETTERED =
      Pattern.compile("(?<year>[A-FHJ-NPR-X])(?<month>[1-9OND])");

  /** A is 1970, 1990 and 2010; G, I, O, Q, Y and Z tell no year. */
  private static final String YEARS = "ABCDEFHJKLMNPRSTUVWX";

  private static final int FIRST_YEAR = 1970;

  private static final Map<String, Integer> AFTER_SEPTEMBER = Map.of("O", 10, "N", 11, "D", 12);

  private MonthCodes() {}

  /** Whether the letters before or behind figures are a month's name. */
  static boolean named(String code) {
    return NAMED.stream().anyMatch(pattern -> pattern.matcher(code).matches());
  }

  /** Every month in these years that the code can tell. */
  static List<DateReading> readings(String code, YearRange years) {
    List<DateReading> readings = new ArrayList<>();
    for (Pattern pattern : NAMED) {
      Matcher matcher = pattern.matcher(code);
      if (matcher.matches()) {
        add(
            matcher,
            month(matcher.group("month")),
            "month and year (common practice)",
            years,
            readings);
      }
    }
    for (Pattern pattern : NUMBERED) {
      Matcher matcher = pattern.matcher(code);
      if (matcher.matches()) {
        int month = Integer.parseInt(matcher.group("month"));
        add(matcher, month, "month and year in figures (common practice)", years, readings);
      }
    }
    Matcher lettered = LETTERED.matcher(code);
    if (lettered.matches()) {
      lettered(lettered, years, readings);
    }
    return readings;
  }

  private static int month(String name) {
    String key = name.substring(0, 3).toUpperCase(Locale.ROOT);
    return switch (key) {
      case "MAI" -> 5;
      case "OKT" -> 10;
      case "DEZ" -> 12;
      default -> "JANFEBMARAPRMAYJUNJULAUGSEPOCTNOVDEC".indexOf(key) / 3 + 1;
    };
  }

  private static void add(
      Matcher matcher, int month, String why, YearRange years, List<DateReading> into) {
    String digits = matcher.group("year").replace("'", "");
    DateCodes.years(digits, years)
        .forEach(year -> into.add(DateReading.ofMonth(year, Month.of(month), why)));
  }

  private static void lettered(Matcher matcher, YearRange years, List<DateReading> into) {
    String letter = matcher.group("month");
    int month =
        AFTER_SEPTEMBER.containsKey(letter)
            ? AFTER_SEPTEMBER.getOrDefault(letter, 0)
            : Integer.parseInt(letter);
    int first = FIRST_YEAR + YEARS.indexOf(matcher.group("year"));
    for (int year = first; year <= years.last(); year += YEARS.length()) {
      if (years.contains(year)) {
        String why = "letter of the year and the month (IEC 60062, from memory)";
        into.add(DateReading.ofMonth(year, Month.of(month), why));
      }
    }
  }
}
