package org.relegend.marking;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads date codes: YYWW and YWW (EIA-476), the same behind a three-digit maker number ("137 7429",
 * "606-4-21") or with up to three letters round four figures ("K8534"), WW/YY, YYYYWW, ISO 8601
 * week dates ("1978-W29"), and months ({@link MonthCodes}). Every year that the digits allow is a
 * reading of its own; so is the week of a maker who counts from the week of 1 January, where that
 * is another week.
 */
public final class DateCodes {
  private static final String HINT =
      "Type it as on the part: 7829, 829, 1377829, 606-4-21 or 1978-W29.";

  /** A way to write a code. */
  private record Form(String title, boolean maker, boolean iso, Pattern pattern) {
    static Form of(String title, String regex) {
      return new Form(
          title, regex.contains("<maker>"), regex.contains("W("), Pattern.compile(regex));
    }
  }

  private static final List<Form> FORMS =
      List.of(
          Form.of("year and week (EIA-476)", "(?<year>[0-9]{2})[-/ ]?(?<week>[0-9]{2})"),
          Form.of(
              "last figure of the year, and week (EIA-476)",
              "(?<year>[0-9])[-/ ]?(?<week>[0-9]{2})"),
          Form.of(
              "year and week (EIA-476) with letters round it (common practice)",
              "(?:[A-Z]{1,3}[- ]?(?<year>[0-9]{2})(?<week>[0-9]{2})(?:[- ]?[A-Z]{1,2})?)"),
          Form.of(
              "year and week (EIA-476) with letters behind it (common practice)",
              "(?<year>[0-9]{2})(?<week>[0-9]{2})[- ]?[A-Z]{1,2}"),
          Form.of(
              "week and year (common practice)",
              "(?<week>[0-9]{1,2})[-/](?<year>[0-9]{2}|[0-9]{4})"),
          Form.of(
              "maker number, year and week (EIA)",
              "(?<maker>[0-9]{3})[- ]?(?<year>[0-9]{1,2})[- ]?(?<week>[0-9]{2})"),
          Form.of(
              "full year and week (common practice)", "(?<year>[0-9]{4})[-/ ]?(?<week>[0-9]{2})"),
          Form.of("ISO 8601 week date", "(?<year>[0-9]{4})-?W(?<week>[0-9]{2})(?:-?[1-7])?"));

  /** Of the 78 and 79 families of fixed regulators (common practice). */
  private static final Set<String> REGULATOR_VOLTS =
      Set.of("05", "06", "08", "09", "10", "12", "15", "18", "20", "24");

  private DateCodes() {}

  /** Every reading in the hundred years of {@link YearRange#ANY}. */
  public static MarkingReadings<DateReading> read(String text) {
    return read(text, YearRange.ANY);
  }

  /** Every reading in these years, earliest first within each way to read the code. */
  public static MarkingReadings<DateReading> read(String text, YearRange years) {
    String fault = MarkingText.fault(text);
    if (!fault.isEmpty()) {
      return MarkingReadings.malformed(fault);
    }
    String code = MarkingText.plain(text);
    if (code.isEmpty()) {
      return MarkingReadings.noValue("No date code is written.");
    }
    List<DateReading> readings = new ArrayList<>();
    boolean shaped = false;
    for (Form form : FORMS) {
      Matcher matcher = form.pattern().matcher(code);
      if (matcher.matches() && !MonthCodes.named(code)) {
        shaped = true;
        read(form, matcher, years, readings);
      }
    }
    readings.addAll(MonthCodes.readings(code, years));
    if (!readings.isEmpty()) {
      return MarkingReadings.read(readings);
    }
    return MarkingReadings.malformed(
        MarkingText.quoted(code) + (shaped ? outside(years) : " is no date code. " + HINT));
  }

  private static String outside(YearRange years) {
    return " names no week from 01 to 53 of a year from %d to %d. Check the digits, or the years."
        .formatted(years.first(), years.last());
  }

  private static void read(Form form, Matcher matcher, YearRange years, List<DateReading> into) {
    String digits = matcher.group("year");
    int week = Integer.parseInt(matcher.group("week"));
    if (week < 1 || week > 53) {
      return;
    }
    String maker = form.maker() ? matcher.group("maker") : "";
    for (int year : years(digits, years)) {
      Optional<LocalDate> iso = WeekScheme.ISO_8601.monday(year, week);
      String why =
          why(form, maker, digits, matcher.group("week"))
              + (iso.isEmpty() ? "; ISO %d has no week 53".formatted(year) : "");
      into.add(new DateReading(year, week, WeekScheme.ISO_8601, iso, maker, why));
      Optional<LocalDate> january = WeekScheme.JANUARY_FIRST.monday(year, week);
      if (!form.iso() && january.isPresent() && !january.equals(iso)) {
        String other =
            why(form, maker, digits, matcher.group("week"))
                + "; weeks counted from the one that holds 1 January";
        into.add(new DateReading(year, week, WeekScheme.JANUARY_FIRST, january, maker, other));
      }
    }
  }

  /** The years of the range that end in these digits. */
  static List<Integer> years(String digits, YearRange range) {
    int step = digits.length() == 4 ? 10_000 : digits.length() == 2 ? 100 : 10;
    int ending = Integer.parseInt(digits);
    List<Integer> years = new ArrayList<>();
    for (int year = range.first(); year <= range.last(); year++) {
      if (year % step == ending) {
        years.add(year);
      }
    }
    return years;
  }

  private static String why(Form form, String maker, String yearDigits, String week) {
    // figures that a chip may carry as its type rather than its date
    boolean type = List.of("78", "79").contains(yearDigits) && REGULATOR_VOLTS.contains(week);
    String regulator = type ? "; the type of a regulator looks the same, so its place decides" : "";
    if (maker.isEmpty()) {
      return form.title() + regulator;
    }
    String name =
        EiaMaker.of(Integer.parseInt(maker)).map(EiaMaker::title).orElse("a maker not listed here");
    String six =
        yearDigits.length() == 1
            ? "; one year figure was usual to about 1961, on loudspeakers through the 1960s"
            : "";
    return form.title() + ": " + maker + " is " + name + six;
  }
}
