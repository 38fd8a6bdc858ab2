package org.relegend.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The series of IEC 60063 against published lists and facts. */
class PreferredSeriesTest {

  /**
   * The published list: qsl.net/g4usp, Component preferred values (D by rule, agreeing with it).
   */
  private static final String E96 =
      "100 102 105 107 110 113 115 118 121 124 127 130 133 137 140 143 147 150 154 158 162 165 169"
          + " 174 178 182 187 191 196 200 205 210 215 221 226 232 237 243 249 255 261 267 274 280"
          + " 287 294 301 309 316 324 332 340 348 357 365 374 383 392 402 412 422 432 442 453 464"
          + " 475 487 499 511 523 536 549 562 576 590 604 619 634 649 665 681 698 715 732 750 768"
          + " 787 806 825 845 866 887 909 931 953 976";

  @Test
  void e96_isThePublishedList() {
    List<Integer> published = Arrays.stream(E96.split(" ")).map(Integer::valueOf).toList();

    assertThat(PreferredSeries.E96.members()).isEqualTo(published);
  }

  /** D: check sums of the published lists. */
  @Test
  void geometricSeries_haveTheirCheckSums() {
    assertThat(sum(PreferredSeries.E96)).isEqualTo(37_070);
    assertThat(sum(PreferredSeries.E48)).isEqualTo(18_313);
    assertThat(PreferredSeries.E192.members()).doesNotHaveDuplicates().hasSize(192);
  }

  /** E192 has 920 where the rule gives 919: edaboard 373015; Hacker News item 16733744. */
  @Test
  void e192_keepsItsOneException() {
    assertThat(PreferredSeries.E192.members()).contains(920).doesNotContain(919);
    assertThat(PreferredSeries.E192.contains(9.20e3)).isTrue();
    assertThat(PreferredSeries.E192.contains(9.19e3)).isFalse();
  }

  /** D: E24 differs from the rounded geometric series at eight places. */
  @Test
  void e24_differsFromTheRuleAtEightPlaces() {
    List<String> differences = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      long rule = Math.round(10 * Math.pow(10, i / 24.0));
      int member = PreferredSeries.E24.members().get(i) / 10;
      if (rule != member) {
        differences.add(member + "(" + rule + ")");
      }
    }

    assertThat(differences)
        .containsExactly(
            "27(26)", "30(29)", "33(32)", "36(35)", "39(38)", "43(42)", "47(46)", "82(83)");
  }

  /** Subsets: slidepub.com e12-resistor-series; what E24 and E96 share is D. */
  @Test
  void series_containOneAnother_butE24IsNoPartOfE96() {
    assertThat(PreferredSeries.E96.members()).containsAll(PreferredSeries.E48.members());
    assertThat(PreferredSeries.E192.members()).containsAll(PreferredSeries.E96.members());
    assertThat(PreferredSeries.E24.members()).containsAll(PreferredSeries.E12.members());
    assertThat(PreferredSeries.E12.members()).containsAll(PreferredSeries.E6.members());
    assertThat(PreferredSeries.E6.members()).containsAll(PreferredSeries.E3.members());
    assertThat(PreferredSeries.E24.members())
        .filteredOn(PreferredSeries.E96.members()::contains)
        .containsExactly(100, 110, 130, 150, 200, 750);
  }

  /** slidepub.com e12-resistor-series prints 7.2 in E24 and 2.77 in E96 (right: 7.5 and 2.67). */
  @Test
  void misprintsOfTheWeb_areNoMembers() {
    assertThat(PreferredSeries.E24.contains(7.2)).isFalse();
    assertThat(PreferredSeries.E24.contains(7.5)).isTrue();
    assertThat(PreferredSeries.E96.contains(2.77)).isFalse();
    assertThat(PreferredSeries.E96.contains(2.67)).isTrue();
  }

  /** qsl.net/g4usp for E6 to E96, diyaudio 225199 for E192; the steps between are ours. */
  @ParameterizedTest
  @CsvSource({
    "0.2, E6",
    "0.1, E12",
    "0.05, E24",
    "0.02, E48",
    "0.01, E96",
    "0.005, E192",
    "0.001, E192",
    "0.03, E24",
    "0.15, E6",
    "0.8, E3",
    "0, E192",
  })
  void tolerance_pairsWithItsSeries(double fraction, PreferredSeries series) {
    assertThat(PreferredSeries.pairedWith(fraction)).isEqualTo(series);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.05, Double.NaN})
  void noTolerance_isRefused(double fraction) {
    assertThatThrownBy(() -> PreferredSeries.pairedWith(fraction))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void everyMember_isFoundInEveryDecade() {
    for (PreferredSeries series : PreferredSeries.values()) {
      for (int decade = -15; decade <= 9; decade++) {
        for (int member : series.members()) {
          double value = member * Math.pow(10, decade); // with the rounding of plain arithmetic
          assertThat(series.contains(value)).as("%s %s", series, value).isTrue();
        }
      }
    }
  }

  @ParameterizedTest(name = "{0} in {1}: {2} to {3}, nearest {4}")
  @CsvSource({
    "5000,   E12,  4700, 5600, 4700",
    "5300,   E12,  4700, 5600, 5600",
    "4700,   E12,  4700, 4700, 4700",
    "9500,   E12,  8200, 10000, 10000",
    "0.095,  E3,   0.047, 0.1, 0.1",
    "4.8e-6, E24,  4.7e-6, 5.1e-6, 4.7e-6",
    "1000,   E96,  1000, 1000, 1000",
    "999.9999999, E96, 1000, 1000, 1000",
  })
  void neighbours_areTheNextMembers(
      double value, PreferredSeries series, double below, double above, double nearest) {
    assertThat(series.around(value))
        .isEqualTo(new PreferredSeries.Neighbours(below, above, nearest));
  }

  @Test
  void coarsestSeries_isTheOneWithFewestMembers() {
    assertThat(PreferredSeries.coarsestWith(4700)).contains(PreferredSeries.E3);
    assertThat(PreferredSeries.coarsestWith(330_000)).contains(PreferredSeries.E6);
    assertThat(PreferredSeries.coarsestWith(4870)).contains(PreferredSeries.E48);
    assertThat(PreferredSeries.coarsestWith(4750)).contains(PreferredSeries.E96);
    assertThat(PreferredSeries.coarsestWith(4711)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      doubles = {
        0,
        -4700,
        Double.MIN_VALUE,
        Double.MAX_VALUE,
        Double.NaN,
        Double.POSITIVE_INFINITY
      })
  void valueThatIsNoPositiveNumber_isInNoSeries(double value) {
    assertThat(PreferredSeries.E192.contains(value)).isFalse();
    assertThat(PreferredSeries.coarsestWith(value)).isEmpty();
    assertThatThrownBy(() -> PreferredSeries.E192.around(value))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static int sum(PreferredSeries series) {
    return series.members().stream().mapToInt(Integer::intValue).sum();
  }
}
