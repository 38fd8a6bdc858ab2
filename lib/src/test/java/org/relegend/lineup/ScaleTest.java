package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.map.Point;

class ScaleTest {
  /**
   * Pins 1 and 7 of a 14-pin dual in-line package are 0.600 inch = 15.24 mm apart (JEDEC MS-001).
   */
  @Test
  void between_pinsOfADualInLinePackage() {
    PackageShape dip = Packages.known().named("DIP-14").orElseThrow();
    Scale scale = Scale.between(dip, 1, new Point(100, 100), 7, new Point(100, 404.8));
    assertThat(scale.at(new Point(0, 0))).isCloseTo(0.05, within(1e-12));
    assertThat(scale.distance(new Point(0, 0), new Point(30, 40))).isCloseTo(2.5, within(1e-12));
  }

  @Test
  void between_samePointOrNoDistance_isRefused() {
    Point p = new Point(5, 6);
    assertThatThrownBy(() -> Scale.between(p, p, 10))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("two different points; both are at 5.0, 6.0");
    for (double bad : new double[] {0, -2, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> Scale.between(p, new Point(9, 9), bad))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("above zero millimetres");
    }
    PackageShape dip = Packages.known().named("DIP-8").orElseThrow();
    assertThatThrownBy(() -> Scale.between(dip, 1, p, 9, new Point(9, 9)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("pins 1 to 8, not 9");
  }

  @Test
  void ofAPerspectiveFit_measuresAlikeNearAndFar() {
    Simulation simulation = new Simulation(12);
    List<PointPair> known = new ArrayList<>();
    // board millimetres: the board's corners in the first picture, at 20 px a millimetre
    for (Point corner : Simulation.PICTURE.corners()) {
      known.add(
          new PointPair(
              simulation.truth.apply(corner), new Point(corner.x() / 20, corner.y() / 20)));
    }
    Fit fit = (Fit) Fitter.of(TransformModel.HOMOGRAPHY).fit(known);
    Scale scale = new Scale(fit.transform());
    for (int i = 0; i < 5; i++) {
      Point p = simulation.place();
      Point a = simulation.truth.apply(p);
      Point b = simulation.truth.apply(p.plus(60, 80));
      assertThat(scale.distance(a, b)).isCloseTo(5, within(1e-9));
    }
  }

  @Test
  void errorsOfAFit_inMillimetres() {
    List<PointPair> pairs = new Simulation(3).pairs(10, 0, 2);
    Fit fit = (Fit) Fitter.of(TransformModel.HOMOGRAPHY).trustingAll().fit(pairs);
    Scale tenth = Scale.between(new Point(0, 0), new Point(10, 0), 1);
    assertThat(fit.errorIn(tenth).rms()).isCloseTo(fit.rms() / 10, within(1e-9));
    assertThat(fit.errorIn(tenth).p95()).isCloseTo(fit.p95() / 10, within(1e-9));
    Point p = new Point(2000, 1000);
    assertThat(fit.radius95(p, tenth)).isCloseTo(fit.lineUp().radius95(p) / 10, within(1e-9));
  }
}
