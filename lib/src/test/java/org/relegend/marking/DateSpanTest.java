package org.relegend.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.relegend.marking.DateSpan.Later;

/** Which part is later than the rest: interval logic over all readings of each code. */
class DateSpanTest {
  private static final int HALF_A_YEAR = 26;

  @Test
  void span_runsFromTheEarliestReadingToTheLatest() {
    DateSpan span = span("829", new YearRange(1968, 1989));

    assertThat(span.earliest()).isEqualTo(LocalDate.of(1968, 7, 15));
    assertThat(span.latest()).isEqualTo(LocalDate.of(1988, 7, 24));
  }

  @Test
  void span_ofWeeksThatDoNotExist_isEmpty() {
    assertThat(DateSpan.of(DateCodes.read("2453").readings())).isEmpty();
    assertThat(DateSpan.of(List.of())).isEmpty();
  }

  @Test
  void order_isKnownOnlyWhereSpansDoNotOverlap() {
    DateSpan board = span("7829", YearRange.ANY);
    DateSpan renewed = span("9114", YearRange.ANY);
    DateSpan open = span("829", YearRange.ANY);

    assertThat(renewed.after(board)).isTrue();
    assertThat(board.after(renewed)).isFalse();
    assertThat(open.overlaps(board)).isTrue();
    assertThat(open.after(board)).isFalse();
    assertThat(renewed.overlaps(board)).isFalse();
  }

  /** Two renewed parts among four originals: neither hides the other. */
  @Test
  void renewedParts_areLaterThanTheRest() {
    Map<String, Later> later =
        DateSpan.laterThanTheRest(
            spans("7829", "7830", "7831", "7836", "9112", "9114"), HALF_A_YEAR);

    assertThat(later)
        .containsExactly(
            Map.entry("7829", Later.NO),
            Map.entry("7830", Later.NO),
            Map.entry("7831", Later.NO),
            Map.entry("7836", Later.NO),
            Map.entry("9112", Later.CERTAINLY),
            Map.entry("9114", Later.CERTAINLY));
  }

  @Test
  void codeWithSeveralYears_isPossiblyLater() {
    Map<String, Later> later = DateSpan.laterThanTheRest(spans("7829", "7830", "831"), HALF_A_YEAR);

    assertThat(later).containsEntry("831", Later.POSSIBLY).containsEntry("7829", Later.NO);
  }

  @Test
  void margin_letsOneBatchLieApart() {
    Map<String, DateSpan> parts = spans("7829", "7830", "7845");

    assertThat(DateSpan.laterThanTheRest(parts, HALF_A_YEAR)).containsEntry("7845", Later.NO);
    assertThat(DateSpan.laterThanTheRest(parts, 4)).containsEntry("7845", Later.CERTAINLY);
  }

  @Test
  void partWithoutOthers_isNotLater() {
    assertThat(DateSpan.laterThanTheRest(spans("7829"), 0)).containsEntry("7829", Later.NO);
    assertThat(DateSpan.laterThanTheRest(Map.of(), 0)).isEmpty();
  }

  @Test
  void spanThatRunsBackwards_isRefused() {
    LocalDate day = LocalDate.of(1978, 7, 17);

    assertThatThrownBy(() -> new DateSpan(day, day.minusDays(1)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static Map<String, DateSpan> spans(String... codes) {
    Map<String, DateSpan> spans = new LinkedHashMap<>();
    for (String code : codes) {
      spans.put(code, span(code, YearRange.upTo(2000)));
    }
    return spans;
  }

  private static DateSpan span(String code, YearRange years) {
    return DateSpan.of(DateCodes.read(code, years).readings()).orElseThrow();
  }
}
