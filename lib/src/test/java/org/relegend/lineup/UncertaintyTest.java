package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UncertaintyTest {
  private static final double KNOWN = Double.POSITIVE_INFINITY;

  /**
   * Upper 5 % points of F with 2 and v degrees of freedom: the table of the NIST/SEMATECH
   * e-Handbook of Statistical Methods, 1.3.6.7.3 (values from memory).
   */
  @ParameterizedTest
  @CsvSource({"2, 19.000", "4, 6.944", "6, 5.143", "8, 4.459", "10, 4.103", "20, 3.493"})
  void radius_ofARoundErrorEstimatedFromFewPairs_followsFisher(int freedom, double quantile) {
    Uncertainty round = new Uncertainty(1, 0, 1, freedom);
    assertThat(round.radius95()).isCloseTo(Math.sqrt(2 * quantile), within(5e-4));
  }

  /** 2.4477 deviations hold 95 % of the Rayleigh distribution: sqrt(-2 ln 0.05). */
  @Test
  void radius_ofAKnownRoundError_followsRayleigh() {
    assertThat(Uncertainty.round(10).radius95()).isCloseTo(24.477, within(5e-4));
    assertThat(Uncertainty.round(1).radius(0.5)).isCloseTo(1.17741, within(5e-6));
  }

  /**
   * An error along one line only follows Student's t: the two-sided 5 % points of the NIST/SEMATECH
   * e-Handbook, 1.3.6.7.2 (values from memory).
   */
  @ParameterizedTest
  @CsvSource({"2, 4.303", "5, 2.571", "10, 2.228", "30, 2.042"})
  void radius_ofAnErrorAlongALine_followsStudent(int freedom, double quantile) {
    assertThat(new Uncertainty(0, 0, 9, freedom).radius95())
        .isCloseTo(3 * quantile, within(3 * 6e-4));
    // turned by 45 degrees
    assertThat(new Uncertainty(4.5, 4.5, 4.5, freedom).radius95())
        .isCloseTo(3 * quantile, within(3 * 6e-4));
    assertThat(new Uncertainty(0, 0, 1, KNOWN).radius95()).isCloseTo(1.95996, within(6e-6));
  }

  @Test
  void radius_ofAnEllipse_holdsWhatItSays() {
    // drawn from the distribution itself
    Random random = new Random(5);
    double radius = new Uncertainty(9, 0, 1, 6).radius95();
    int held = 0;
    int draws = 200_000;
    for (int i = 0; i < draws; i++) {
      double chi = 0;
      for (int k = 0; k < 6; k++) {
        chi += Math.pow(random.nextGaussian(), 2);
      }
      double estimated = Math.sqrt(chi / 6);
      double off = Math.hypot(3 * random.nextGaussian(), random.nextGaussian());
      held += off <= radius * estimated ? 1 : 0;
    }
    assertThat(100.0 * held / draws).isCloseTo(95, within(0.2));
  }

  @Test
  void plus_andThrough_addVariancesAndStretchThem() {
    Uncertainty sum = Uncertainty.round(3).plus(Uncertainty.round(4));
    assertThat(sum.radius95()).isCloseTo(Uncertainty.round(5).radius95(), within(1e-9));
    // Welch and Satterthwaite: two equal estimates have twice the freedom of one
    Uncertainty estimated = new Uncertainty(1, 0, 1, 4);
    assertThat(estimated.plus(estimated).freedom()).isCloseTo(8, within(1e-12));
    assertThat(estimated.plus(Uncertainty.NONE)).isEqualTo(estimated);
    assertThat(Uncertainty.round(2).through(new Jacobian(0, -3, 3, 0)).radius95())
        .isCloseTo(Uncertainty.round(6).radius95(), within(1e-9));
  }

  @Test
  void badFigures_areRefused() {
    assertThatThrownBy(() -> new Uncertainty(-1, 0, 1, 2))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Uncertainty(1, 0, 1, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Uncertainty.NONE.radius(1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("between 0 and 1");
    assertThat(Uncertainty.NONE.radius95()).isZero();
  }
}
