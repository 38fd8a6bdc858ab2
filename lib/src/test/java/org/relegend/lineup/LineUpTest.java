package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.Point;

class LineUpTest {

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void reversed_bringsPointsBack_withTheErrorSeenFromThere(long seed) {
    LineUp there = lineUp(new Simulation(seed));
    Point p = new Simulation(seed).place();
    Point q = there.carry(p).orElseThrow();
    LineUp back = there.reversed();
    assertThat(back.carry(q).orElseThrow().distance(p)).isLessThan(1e-6);
    double scale = there.transform().scaleAt(p);
    assertThat(back.radius95(q)).isCloseTo(there.radius95(p) / scale, withinPercentage(15));
    assertThat(back.reversed()).isSameAs(there);
  }

  @Test
  void chain_addsItsErrors() {
    Simulation simulation = new Simulation(2);
    LineUp first = lineUp(simulation);
    LineUp second = lineUp(new Simulation(2)).reversed();
    LineUp around = first.then(second);
    Point p = simulation.place();
    Point q = first.carry(p).orElseThrow();
    assertThat(around.carry(p).orElseThrow().distance(p)).isLessThan(15);
    assertThat(around.radius95(p)).isGreaterThan(second.radius95(q));
    assertThat(around.reversed().carry(around.carry(p).orElseThrow()).orElseThrow().distance(p))
        .isLessThan(1e-6);
    LineUp doubled = first.then(LineUp.exact(Transform.scale(2)));
    assertThat(doubled.radius95(p)).isCloseTo(2 * first.radius95(p), within(1e-9));
    assertThat(doubled.transform().apply(p).distance(new Point(2 * q.x(), 2 * q.y())))
        .isLessThan(1e-6);
  }

  /** Of chains too, the stated circle must hold the truth 95 times in 100. */
  @Test
  void chain_ofTwoFits_isCoveredByItsCircle() {
    int held = 0;
    int trials = 800;
    for (int i = 0; i < trials; i++) {
      Simulation one = new Simulation(2L * i);
      Simulation two = new Simulation(2L * i + 1);
      LineUp chain = lineUp(one).reversed().then(lineUp(two));
      Point place = one.place();
      Point start = one.truth.apply(place);
      double off = chain.carry(start).orElseThrow().distance(two.truth.apply(place));
      held += off <= chain.radius95(start) ? 1 : 0;
    }
    assertThat(100.0 * held / trials).isBetween(93.0, 97.0);
  }

  @Test
  void exact_hasNoError() {
    LineUp exact = LineUp.exact(Transform.shift(3, 4));
    assertThat(exact.radius95(new Point(9, 9))).isZero();
    assertThat(exact.reversed().carry(new Point(3, 4))).contains(new Point(0, 0));
  }

  private static LineUp lineUp(Simulation simulation) {
    List<PointPair> pairs = simulation.pairs(8, 0, 2);
    Fit fit = (Fit) Fitter.of(TransformModel.HOMOGRAPHY).trustingAll().fit(pairs);
    return fit.lineUp();
  }
}
