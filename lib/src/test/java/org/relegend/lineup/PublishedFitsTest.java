package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.relegend.map.Point;

/** Fits that others printed, to the digits that they stated. */
class PublishedFitsTest {
  /** Three points of the docstrings of scikit-image's _geometric.py (at commit cd0a3d2). */
  private static final List<PointPair> THREE =
      List.of(
          PointPair.of(150, 150, 200, 200),
          PointPair.of(250, 100, 300, 150),
          PointPair.of(150, 200, 150, 400));

  /** SRC and DST of scikit-image's test_geometric.py. */
  private static final List<PointPair> EIGHT =
      List.of(
          PointPair.of(-12.3705, -10.5075, 0, 0),
          PointPair.of(-10.7865, 15.4305, 0, 5800),
          PointPair.of(8.6985, 10.8675, 4900, 5800),
          PointPair.of(11.4975, -9.5715, 4900, 0),
          PointPair.of(7.8435, 7.4835, 4479, 4580),
          PointPair.of(-5.3325, 6.5025, 1176, 3660),
          PointPair.of(6.7905, -6.3765, 3754, 790),
          PointPair.of(-6.1695, -0.8235, 1024, 1931));

  @Test
  void rigid_ofThreePoints_asPrintedByScikitImage() {
    Fit fit = trusted(TransformModel.RIGID, THREE);
    assertMatrix(fit.transform(), 5e-3, 0.99, 0.12, 16.77, -0.12, 0.99, 122.91, 0, 0, 1);
    // the further digits: the closed form computed in exact arithmetic apart from this program
    assertMatrix(
        fit.transform(),
        6e-7,
        0.992877,
        0.119145,
        16.767463,
        -0.119145,
        0.992877,
        122.911765,
        0,
        0,
        1);
    assertThat(fit.rms()).isCloseTo(73.86, within(5e-3));
  }

  @Test
  void similarity_ofThreePoints_asPrintedByScikitImage() {
    Fit fit = trusted(TransformModel.SIMILARITY, THREE);
    assertMatrix(fit.transform(), 5e-3, 1.79, 0.21, -142.86, -0.21, 1.79, 21.43, 0, 0, 1);
    assertThat(fit.transform().scaleAt(new Point(0, 0))).isCloseTo(1.7985255, within(6e-8));
    double degrees = Math.toDegrees(Math.atan2(fit.transform().m10(), fit.transform().m00()));
    assertThat(degrees).isCloseTo(-6.842773, within(6e-7));
    // the mean squared distance is 62500/21, in exact fractions
    assertThat(fit.rms()).isCloseTo(54.5545, within(6e-5));
  }

  @Test
  void affine_ofThreePoints_asPrintedByScikitImage_isExact() {
    Fit fit = trusted(TransformModel.AFFINE, THREE);
    assertMatrix(fit.transform(), 1e-9, 0.5, -1, 275, 1.5, 4, -625, 0, 0, 1);
    assertThat(fit.rms()).isLessThan(1e-9);
    assertThat(fit.freedom()).isZero();
  }

  /** The same docstring prints a projective matrix from three points; nothing determines it. */
  @Test
  void homography_ofThreePoints_isRefused() {
    FitResult result = Fitter.of(TransformModel.HOMOGRAPHY).fit(THREE);
    assertThat(result).isInstanceOf(Refusal.class);
    assertThat(((Refusal) result).reason()).isEqualTo(Refusal.Reason.TOO_FEW_PAIRS);
  }

  /**
   * The example of Umeyama, Least-squares estimation of transformation parameters between two point
   * patterns, 1991 (figures from memory to three digits): three points that only a mirror would
   * fit, and the best rotation without one.
   */
  @Test
  void similarity_ofUmeyamasExample_withoutMirror() {
    List<PointPair> pairs =
        List.of(PointPair.of(0, 0, 0, 0), PointPair.of(1, 0, -1, 0), PointPair.of(0, 2, 0, 2));
    LeastSquaresSolution solution = solved(TransformModel.SIMILARITY, pairs, false);
    Transform transform = solution.transform();
    double scale = transform.scaleAt(new Point(0, 0));
    assertThat(scale).isCloseTo(0.721, within(5e-4));
    assertThat(transform.m00() / scale).isCloseTo(0.832, within(5e-4));
    assertThat(transform.m01() / scale).isCloseTo(0.555, within(5e-4));
    assertThat(transform.m02()).isCloseTo(-0.8, within(5e-4));
    assertThat(transform.m12()).isCloseTo(0.4, within(5e-4));
    assertThat(transform.mirrors()).isFalse();
    double scaleOfFrame = solution.pairs.toScale;
    double mean = solution.squares / (scaleOfFrame * scaleOfFrame) / 3;
    assertThat(mean).isCloseTo(0.533333, within(6e-7));
  }

  /** The points of the example at pypi.org/project/umeyama: a rotation alone can't fit them. */
  @Test
  void rigid_ofAReflectedSquare_leavesAnErrorUnlessMirrored() {
    List<PointPair> pairs =
        List.of(
            PointPair.of(0, 0, 1, 1),
            PointPair.of(1, 0, 1, 2),
            PointPair.of(1, 1, 2, 2),
            PointPair.of(0, 1, 2, 1));
    // every turn is as bad as any other, so there is no best one
    NormalisedPairs straight = NormalisedPairs.of(pairs, false, true);
    assertThat(RigidFamily.RIGID.solve(straight, new int[] {0, 1, 2, 3})).isEmpty();
    assertThat(solved(TransformModel.RIGID, pairs, true).squares).isLessThan(1e-20);
    Fit fit = trusted(TransformModel.RIGID, pairs);
    assertThat(fit.mirrors()).isTrue();
    Fitter sameSide = Fitter.of(TransformModel.RIGID).trustingAll().expecting(SideRelation.SAME);
    assertThat(sameSide.fit(pairs))
        .isInstanceOfSatisfying(
            Refusal.class, r -> assertThat(r.reason()).isEqualTo(Refusal.Reason.MIRRORED));
  }

  @Test
  void homography_ofTheFirstFourControlPoints_leavesTheKnownErrorsAtTheOthers() {
    Transform exact = trusted(TransformModel.HOMOGRAPHY, EIGHT.subList(0, 4)).transform();
    assertMatrix(
        exact,
        6e-9,
        194.66901291,
        -11.88818399,
        2283.23793085,
        -8.69100775,
        221.62069773,
        2221.16736993,
        -0.01269597,
        -0.00960536,
        1);
    double[] off = {23.68, 32.54, 30.42, 19.29};
    for (int i = 0; i < 4; i++) {
      PointPair pair = EIGHT.get(4 + i);
      assertThat(exact.apply(pair.from()).distance(pair.to())).isCloseTo(off[i], within(5e-3));
    }
  }

  /** The figures are those of the normalised direct linear transform, before any refinement. */
  @Test
  void directLinearTransform_ofAllEightControlPoints() {
    NormalisedPairs coordinates = NormalisedPairs.of(EIGHT, false, false);
    int[] all = IntStream.range(0, 8).toArray();
    double[] numbers = HomographyFamily.direct(coordinates, all).orElseThrow();
    Transform direct =
        coordinates.unframed(Transform.of(HomographyFamily.HOMOGRAPHY.matrix(numbers)));
    assertMatrix(
        direct,
        6e-9,
        194.26893768,
        -11.98443822,
        2285.55473797,
        -8.26730163,
        220.68431786,
        2217.75062412,
        -0.01258967,
        -0.00970093,
        1);
    assertThat(rms(direct)).isCloseTo(16.39, within(5e-3));
    assertThat(trusted(TransformModel.AFFINE, EIGHT).rms()).isCloseTo(379.22, within(5e-3));
    assertThat(trusted(TransformModel.SIMILARITY, EIGHT).rms()).isCloseTo(446.92, within(5e-3));
    // refinement may only lessen what it minimises
    assertThat(trusted(TransformModel.HOMOGRAPHY, EIGHT).rms()).isLessThan(rms(direct));
  }

  /** Corners of a book cover, an example found in several tutorials; the matrix computed apart. */
  @Test
  void homography_ofTheBookCorners() {
    List<PointPair> pairs =
        List.of(
            PointPair.of(141, 131, 318, 256),
            PointPair.of(480, 159, 534, 372),
            PointPair.of(493, 630, 316, 670),
            PointPair.of(64, 601, 73, 473));
    double[] expected = {
      0.434043935,
      -0.419622184,
      291.709494,
      0.146491654,
      0.441418278,
      161.369294,
      -3.62463336e-4,
      -9.14274844e-5,
      1
    };
    double[] fitted = trusted(TransformModel.HOMOGRAPHY, pairs).transform().matrix();
    for (int i = 0; i < 9; i++) {
      assertThat(fitted[i]).isCloseTo(expected[i], within(6e-9 * Math.abs(expected[i])));
    }
  }

  /** The shear of the getPerspectiveTransform example of R's Rvision at rdrr.io. */
  @Test
  void homography_ofAShear_isThatShear() {
    List<PointPair> pairs =
        List.of(
            PointPair.of(1, 1, 1, 1),
            PointPair.of(2, 5, 1, 5),
            PointPair.of(6, 5, 5, 5),
            PointPair.of(5, 1, 5, 1));
    Transform shear = trusted(TransformModel.HOMOGRAPHY, pairs).transform();
    assertMatrix(shear, 1e-12, 1, -0.25, 0.25, 0, 1, 0, 0, 0, 1);
  }

  /** Hartley and Zisserman, Multiple View Geometry, 4.4 (rule from memory), for the unit square. */
  @Test
  void normalisation_ofTheUnitSquare() {
    List<Point> square = Extent.of(1, 1).corners();
    Transform frame = NormalisedPairs.frame(square, NormalisedPairs.spread(square));
    assertMatrix(frame, 1e-15, 2, 0, -1, 0, 2, -1, 0, 0, 1);
  }

  private static double rms(Transform transform) {
    List<Double> squares = new ArrayList<>();
    for (PointPair pair : EIGHT) {
      squares.add(Math.pow(transform.apply(pair.from()).distance(pair.to()), 2));
    }
    return Math.sqrt(squares.stream().mapToDouble(s -> s).average().orElseThrow());
  }

  private static Fit trusted(TransformModel model, List<PointPair> pairs) {
    return (Fit) Fitter.of(model).trustingAll().fit(pairs);
  }

  private static LeastSquaresSolution solved(
      TransformModel model, List<PointPair> pairs, boolean mirrored) {
    NormalisedPairs coordinates =
        NormalisedPairs.of(pairs, mirrored, model == TransformModel.RIGID);
    int[] all = IntStream.range(0, pairs.size()).toArray();
    return LeastSquaresSolution.of(TransformFamily.of(model), coordinates, all).orElseThrow();
  }

  private static void assertMatrix(Transform transform, double tolerance, double... expected) {
    assertThat(transform.matrix()).containsExactly(expected, within(tolerance));
  }
}
