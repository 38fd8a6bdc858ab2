package org.relegend.demo.truth;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.demo.design.Spot;

class HullTest {
  @Test
  void squareWithPointsInside_givesItsCorners() {
    List<Spot> hull =
        Hull.of(
            List.of(
                new Spot(0, 0),
                new Spot(4, 4),
                new Spot(2, 2),
                new Spot(4, 0),
                new Spot(2, 0),
                new Spot(0, 4)));
    assertThat(hull)
        .containsExactlyInAnyOrder(new Spot(0, 0), new Spot(4, 0), new Spot(4, 4), new Spot(0, 4));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12, 13, 14})
  void everyPoint_liesInsideTheHull(long seed) {
    Random random = new Random(seed);
    List<Spot> points = new ArrayList<>();
    for (int k = 0; k < 60; k++) {
      points.add(new Spot(random.nextInt(100), random.nextInt(100)));
    }
    List<Spot> hull = Hull.of(points);
    for (int k = 0; k < hull.size(); k++) {
      Spot a = hull.get(k);
      Spot b = hull.get((k + 1) % hull.size());
      for (Spot p : points) {
        double side = (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
        assertThat(side).isGreaterThanOrEqualTo(0);
      }
    }
  }

  @Test
  void twoPoints_comeBack() {
    assertThat(Hull.of(List.of(new Spot(1, 1), new Spot(0, 0)))).hasSize(2);
  }
}
