package org.relegend.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.marking.MarkingReadings.Outcome;

/** Date codes against published examples; each row names its source. */
class DateCodesTest {

  @ParameterizedTest(name = "{0}: {1} week {2}, Monday {3}: {4}")
  @CsvSource({
    "0443,     2004, 43, 2004-10-18, homyetpart.com; the days are D",
    "304420,   1954, 20, 1954-05-17, vintagerocker.com/potinfo.php (Stackpole); the day is D",
    "1377429,  1974, 29, 1974-07-15, vintagerocker.com (CTS); the days are D",
    "606-4-21, 1964, 21, 1964-05-18, raumtelecom.ru; the day is D",
    "0648,     2006, 48, 2006-11-27, Microchip DS22022B p.12 by ISO; the day is D",
    "0814,     2008, 14, 2008-03-31, Microchip DS22062B p.15 by ISO; the day is D",
    "9725,     1997, 25, 1997-06-16, Microchip DS40181B p.103 by ISO; the day is D",
  })
  void publishedCode_isAmongTheReadings(
      String code, int year, int week, LocalDate monday, String source) {
    List<DateReading> readings = DateCodes.read(code, YearRange.upTo(2026)).readings();

    assertThat(readings)
        .filteredOn(reading -> reading.scheme() == WeekScheme.ISO_8601 && reading.year() == year)
        .singleElement()
        .satisfies(
            reading -> {
              assertThat(reading.week()).isEqualTo(week);
              assertThat(reading.monday()).contains(monday);
              assertThat(reading.why()).isNotBlank();
            });
  }

  /** 342: homyetpart.com gives 2003; that 1993, 1983, 1973 fit as well is D. */
  @Test
  void threeDigits_repeatEveryTenYears() {
    assertThat(years("342", YearRange.upTo(2026)))
        .containsExactly(1953, 1963, 1973, 1983, 1993, 2003, 2013, 2023);
    assertThat(years("342", new YearRange(1970, 2005))).containsExactly(1973, 1983, 1993, 2003);
  }

  /** avtonod.ru: 137634 is 1956, 1966 or 1976, all three kept. */
  @Test
  void sixDigits_keepAllYears() {
    List<DateReading> readings = DateCodes.read("137634", new YearRange(1950, 1979)).readings();

    assertThat(readings).extracting(DateReading::year).containsOnly(1956, 1966, 1976);
    assertThat(readings).extracting(DateReading::maker).containsOnly("137");
    assertThat(readings.get(0).knownMaker()).contains(EiaMaker.CTS);
  }

  @ParameterizedTest(name = "{0} is {1}: {2}")
  @CsvSource({
    "134, Centralab,        stereophile.com/content/listening-61; vintagerocker.com",
    "137, CTS,              vintagerocker.com",
    "188, General Electric, the same lists (there as GE)",
    "220, Jensen,           the same lists",
    "304, Stackpole,        vintagerocker.com/potinfo.php",
    "328, Utah,             the same lists",
    "391, Altec,            the same lists",
    "649, Electro-Voice,    the same lists",
  })
  void makerNumber_isKnown(int number, String title, String source) {
    assertThat(EiaMaker.of(number).orElseThrow().title()).isEqualTo(title);
  }

  @Test
  void unknownMaker_isKeptAsWritten() {
    DateReading reading = DateCodes.read("0997429", YearRange.upTo(2026)).first().orElseThrow();

    assertThat(reading.maker()).isEqualTo("099");
    assertThat(reading.knownMaker()).isEmpty();
    assertThat(reading.year()).isEqualTo(1974);
  }

  @ParameterizedTest(name = "{0} is {1}-W{2}: {3}")
  @CsvSource({
    "2003-12-29, 2004, 1,  postgresql.org 17319",
    "2005-01-01, 2004, 53, postgresql.org 17319",
    "2006-01-01, 2005, 52, postgrespro",
    "2012-12-31, 2013, 1,  pub.dev time_machine",
    "2011-01-01, 2010, 52, pub.dev time_machine",
    "1997-12-28, 1997, 52, IBM i WEEK_ISO",
    "1997-12-31, 1998, 1,  IBM i WEEK_ISO",
    "1998-01-01, 1998, 1,  IBM i WEEK_ISO",
    "1999-01-01, 1998, 53, IBM i WEEK_ISO",
    "1999-01-04, 1999, 1,  IBM i WEEK_ISO",
    "2020-12-31, 2020, 53, Kusto week_of_year",
    "1970-01-01, 1970, 1,  Kusto week_of_year",
    "2000-01-01, 1999, 52, IBM i WEEK_ISO",
  })
  void isoWeek_holdsThePublishedDay(LocalDate day, int year, int week, String source) {
    LocalDate monday = WeekScheme.ISO_8601.monday(year, week).orElseThrow();

    assertThat(day).isBetween(monday, monday.plusDays(6));
  }

  /** D: the years from 1950 to 2024 that have an ISO week 53. */
  @Test
  void isoWeek53_isInItsYearsOnly() {
    List<Integer> years =
        IntStream.rangeClosed(1950, 2024)
            .filter(year -> WeekScheme.ISO_8601.weeks(year) == 53)
            .boxed()
            .toList();

    assertThat(years)
        .containsExactly(
            1953, 1959, 1964, 1970, 1976, 1981, 1987, 1992, 1998, 2004, 2009, 2015, 2020);
  }

  /** 54.164.20.162, a page on parts: "2024 has 53 ISO weeks" (right: 52, D). */
  @Test
  void week53OfAYearWithout_hasNoMonday() {
    DateReading reading = DateCodes.read("2453").only().orElseThrow();

    assertThat(reading.year()).isEqualTo(2024);
    assertThat(reading.monday()).isEmpty();
    assertThat(reading.why()).contains("2024 has no week 53");
    assertThat(DateCodes.read("2053").first().orElseThrow().monday())
        .contains(LocalDate.of(2020, 12, 28));
  }

  /** D: 2005-01-01 is in 0453 by ISO and in 0501 by the rule of Microchip DS22022B p.12. */
  @Test
  void weekOfJanuaryFirst_isASecondReadingWhereItDiffers() {
    LocalDate day = LocalDate.of(2005, 1, 1);
    List<DateReading> readings = DateCodes.read("0501").readings();

    assertThat(readings)
        .extracting(DateReading::scheme)
        .containsExactly(WeekScheme.ISO_8601, WeekScheme.JANUARY_FIRST);
    LocalDate january = readings.get(1).monday().orElseThrow();
    assertThat(day).isBetween(january, january.plusDays(6));
    assertThat(readings.get(0).monday()).contains(LocalDate.of(2005, 1, 3));
    assertThat(DateCodes.read("0453").first().orElseThrow().monday()).contains(january);
    assertThat(DateCodes.read("0401").readings()).hasSize(1); // 1 January 2004 was a Thursday
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"1978-W29", "1978W29", "1978W293", "1978-W29-3", "197829", "7829", "78-29"})
  void everyWayToWriteAWeek_givesThatWeek(String code) {
    assertThat(DateCodes.read(code, YearRange.upTo(2026)).readings())
        .filteredOn(reading -> reading.scheme() == WeekScheme.ISO_8601)
        .anyMatch(reading -> reading.monday().equals(Optional.of(LocalDate.of(1978, 7, 17))));
  }

  /** Six digits are a maker and a date, or a full year and week: both are kept. */
  @Test
  void sixDigits_mayBeginWithTheYear() {
    List<DateReading> readings = DateCodes.read("197829", new YearRange(1975, 1980)).readings();

    assertThat(readings).extracting(DateReading::maker).contains("197", "");
  }

  @ParameterizedTest
  @CsvSource({
    "7800, no week",
    "7854, no week",
    "7899, no week",
    "78, no date code",
    "78295, no date code",
    "78A9, no date code",
    "code, no date code",
    "-7829, no date code",
    "12345678, no date code",
    "1978-W54, no week",
    "1812-W20, no week",
  })
  void codeThatIsNone_isRefused(String code, String reason) {
    MarkingReadings<DateReading> answer = DateCodes.read(code);

    assertThat(answer.outcome()).isEqualTo(Outcome.MALFORMED);
    assertThat(answer.reason()).contains(code).contains(reason);
  }

  @Test
  void yearOutsideTheRange_isRefusedWithTheRange() {
    MarkingReadings<DateReading> answer = DateCodes.read("7829", new YearRange(1985, 1995));

    assertThat(answer.outcome()).isEqualTo(Outcome.MALFORMED);
    assertThat(answer.reason()).contains("1985").contains("1995");
  }

  @Test
  void emptyOrHostileText_isAnswered() {
    assertThat(DateCodes.read(" ").outcome()).isEqualTo(Outcome.NO_VALUE);
    assertThat(DateCodes.read("7".repeat(10_000_000)).outcome()).isEqualTo(Outcome.MALFORMED);
    assertThat(DateCodes.read("78\u200F29").reason()).contains("U+200F");
  }

  @ParameterizedTest
  @CsvSource({"1980, 1979", "1800, 1950", "1950, 3000"})
  void rangeThatIsNone_isRefused(int first, int last) {
    assertThatThrownBy(() -> new YearRange(first, last))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static List<Integer> years(String code, YearRange range) {
    return DateCodes.read(code, range).readings().stream()
        .filter(reading -> reading.scheme() == WeekScheme.ISO_8601)
        .map(DateReading::year)
        .toList();
  }
}
