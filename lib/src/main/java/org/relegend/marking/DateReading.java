package org.relegend.marking;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.Optional;

/**
 * One way to read a date code.
 *
 * @param week as written, 1 to 53; 0 where the code tells a month
 * @param monday the first day of that week; empty if the year has no such week in that scheme, so
 *     that year or scheme is wrong
 * @param maker the three-digit number of the maker as written, "137"; empty when the code has none
 * @param month where the code tells a month in place of a week
 * @param why how the code was read so; a sentence for the user
 */
public record DateReading(
    int year,
    int week,
    WeekScheme scheme,
    Optional<LocalDate> monday,
    String maker,
    Optional<Month> month,
    String why) {
  public DateReading {
    requireNonNull(scheme);
    requireNonNull(monday);
    if (!maker.isEmpty() && !maker.matches("[0-9]{3}")) {
      throw new IllegalArgumentException("a maker number has three digits, not " + maker);
    }
    requireNonNull(why);
    if (month.isPresent() == (week > 0)) {
      throw new IllegalArgumentException("a code tells a week or a month: " + week + ", " + month);
    }
  }

  /** Of a code that tells a week. */
  public DateReading(
      int year, int week, WeekScheme scheme, Optional<LocalDate> monday, String maker, String why) {
    this(year, week, scheme, monday, maker, Optional.empty(), why);
  }

  static DateReading ofMonth(int year, Month month, String why) {
    return new DateReading(
        year, 0, WeekScheme.ISO_8601, Optional.empty(), "", Optional.of(month), why);
  }

  /** The days of that week or month; empty if the year has no such week. */
  public Optional<DateSpan> days() {
    return month
        .map(result -> YearMonth.of(year, result))
        .map(result -> new DateSpan(result.atDay(1), result.atEndOfMonth()))
        .or(() -> monday.map(first -> new DateSpan(first, first.plusDays(6))));
  }

  /** The maker, where its number is known here. */
  public Optional<EiaMaker> knownMaker() {
    return maker.isEmpty() ? Optional.empty() : EiaMaker.of(Integer.parseInt(maker));
  }
}
