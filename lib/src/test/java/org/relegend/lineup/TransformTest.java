package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.Point;

class TransformTest {
  /**
   * The matrix between two photos of a wall that the AKAZE tutorial at docs.opencv.org, version
   * 3.0.0, prints (its sample file H1to3p.xml).
   */
  static final Transform WALL =
      Transform.of(
          0.76285898,
          -0.29922929,
          225.67123,
          0.33443473,
          1.0143901,
          -76.999973,
          3.4663091e-4,
          -1.4364524e-5,
          1);

  @ParameterizedTest
  @CsvSource({
    "0, 0, 225.67123, -76.999973",
    "100, 100, 263.28609, 56.02112",
    "400, 320, 383.63322, 336.29631",
    "799, 639, 507.96547, 661.32074"
  })
  void apply_ofThePublishedMatrix_carriesItsPoints(double x, double y, double u, double v) {
    Point carried = WALL.apply(new Point(x, y));
    assertThat(carried.x()).isCloseTo(u, within(6e-6));
    assertThat(carried.y()).isCloseTo(v, within(6e-6));
  }

  /** The inverse as computed from the published matrix by general linear algebra. */
  @Test
  void inverse_ofThePublishedMatrix_hasTheKnownNumbers() {
    double[] expected = {
      1.15948426,
      0.338693778,
      -235.582826,
      -0.413229743,
      0.783415836,
      153.577063,
      -4.07848931e-4,
      -1.06148337e-4,
      1
    };
    double[] inverse = WALL.inverse().matrix();
    for (int i = 0; i < 9; i++) {
      assertThat(inverse[i]).isCloseTo(expected[i], within(6e-9 * Math.abs(expected[i])));
    }
    assertThat(WALL.determinant()).isCloseTo(0.80061768, within(6e-9));
    assertThat(WALL.mirrors()).isFalse();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void inverseAndAfter_undoEachOther(long seed) {
    Simulation simulation = new Simulation(seed);
    Transform there = simulation.truth;
    Point p = simulation.place();
    Point back = there.inverse().apply(there.apply(p));
    assertThat(back.distance(p)).isLessThan(1e-8);
    Transform both = WALL.after(there);
    assertThat(both.apply(p).distance(WALL.apply(there.apply(p)))).isLessThan(1e-6);
    assertThat(there.inverse().denominator(there.apply(p))).isPositive();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void jacobian_isTheSlopeOfTheCarriedPoint(long seed) {
    Simulation simulation = new Simulation(seed);
    Point p = simulation.place();
    Jacobian slope = simulation.truth.jacobian(p);
    double step = 1e-3;
    Point right = simulation.truth.apply(p.plus(step, 0));
    Point left = simulation.truth.apply(p.plus(-step, 0));
    Point down = simulation.truth.apply(p.plus(0, step));
    Point up = simulation.truth.apply(p.plus(0, -step));
    assertThat(slope.xx()).isCloseTo((right.x() - left.x()) / (2 * step), within(1e-6));
    assertThat(slope.yx()).isCloseTo((right.y() - left.y()) / (2 * step), within(1e-6));
    assertThat(slope.xy()).isCloseTo((down.x() - up.x()) / (2 * step), within(1e-6));
    assertThat(slope.yy()).isCloseTo((down.y() - up.y()) / (2 * step), within(1e-6));
  }

  @Test
  void slant_ofASurfaceSeenAtSixtyDegrees_isTwo() {
    // 1 / cos 60 degrees, by definition; the turn changes nothing
    double c = Math.cos(0.3);
    double s = Math.sin(0.3);
    assertThat(new Jacobian(c, -s / 2, s, c / 2).slant()).isCloseTo(2, within(1e-12));
    assertThat(new Jacobian(3, 0, 0, -3).slant()).isCloseTo(1, within(1e-12));
    assertThat(new Jacobian(3, 0, 0, -3).scale()).isCloseTo(3, within(1e-12));
  }

  @Test
  void scaledByAPositiveNumber_isTheSameTransform() {
    assertThat(Transform.of(2, 0, 4, 0, 2, 6, 0, 0, 2)).isEqualTo(Transform.shift(2, 3));
    assertThat(Transform.of(-1, 0, 0, 0, 1, 0, 0, 0, 1).mirrors()).isTrue();
  }

  @Test
  void badMatrices_areRefused() {
    assertThatThrownBy(() -> Transform.of(1, 2, 3))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("nine numbers, not 3");
    assertThatThrownBy(() -> Transform.of(1, 1, 0, 1, 1, 0, 0, 0, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("inverted");
    assertThatThrownBy(() -> Transform.of(Double.NaN, 0, 0, 0, 1, 0, 0, 0, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Transform.of(0, 0, 0, 0, 0, 0, 0, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void apply_onTheHorizon_isRefused() {
    Transform tilted = Transform.of(1, 0, 0, 0, 1, 0, -0.01, 0, 1);
    assertThatThrownBy(() -> tilted.apply(new Point(100, 5)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("infinity");
    LineUp lineUp = LineUp.exact(tilted);
    assertThat(lineUp.carry(new Point(100, 5))).isEmpty();
    assertThat(lineUp.carry(new Point(101, 5))).isEmpty();
    assertThat(lineUp.carry(new Point(50, 5))).contains(new Point(100, 10));
  }
}
