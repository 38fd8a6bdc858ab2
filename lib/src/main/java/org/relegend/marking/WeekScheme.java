package org.relegend.marking;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.Optional;

/** How the weeks of a year are counted. Weeks begin on Monday in both. */
public enum WeekScheme {
  /** Week 1 holds 4 January (ISO 8601). */
  ISO_8601(4),
  /**
   * Week 1 holds 1 January: the rule in data sheets of one maker (Microchip DS22022B page 12 and
   * others). They leave open on which day a week begins; Monday is assumed here.
   */
  JANUARY_FIRST(1);

  private final int dayInFirstWeek;

  WeekScheme(int dayInFirstWeek) {
    this.dayInFirstWeek = dayInFirstWeek;
  }

  /** The Monday of a week; empty if the year has no such week. */
  public Optional<LocalDate> monday(int year, int week) {
    if (week < 1 || week > weeks(year)) {
      return Optional.empty();
    }
    return Optional.of(firstMonday(year).plusWeeks(week - 1L));
  }

  /** How many weeks the year has: 52 or 53. */
  public int weeks(int year) {
    return (int) ChronoUnit.WEEKS.between(firstMonday(year), firstMonday(year + 1));
  }

  private LocalDate firstMonday(int year) {
    return LocalDate.of(year, 1, dayInFirstWeek)
        .with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }
}
