package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.map.Point;

/**
 * A general-purpose library (Hipparchus) solves the same least squares by another route: singular
 * values in place of QR, its own optimiser in place of ours, plain pixels in place of our frames.
 */
class FitAgreementTest {
  private static final double AGREED = 1e-6;

  static IntStream seeds() {
    return IntStream.range(0, 25);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void linearModels_agreeWithSingularValues(int seed) {
    Simulation simulation = new Simulation(seed);
    List<PointPair> pairs = simulation.pairs(3 + seed, 0, 2);
    assertAgreed(pairs, trusted(TransformModel.AFFINE, pairs), affineBySingularValues(pairs));
    assertAgreed(
        pairs, trusted(TransformModel.SIMILARITY, pairs), similarityBySingularValues(pairs));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void homography_agreesWithAGeneralOptimiser(int seed) {
    Simulation simulation = new Simulation(seed);
    List<PointPair> pairs = simulation.pairs(5 + seed, 0, 2);
    assertAgreed(
        pairs, trusted(TransformModel.HOMOGRAPHY, pairs), homographyByOptimiser(pairs, simulation));
  }

  private static Transform trusted(TransformModel model, List<PointPair> pairs) {
    // the mirrored similarity is another family, solved for apart
    NormalisedPairs coordinates = NormalisedPairs.of(pairs, false, false);
    int[] all = IntStream.range(0, pairs.size()).toArray();
    return LeastSquaresSolution.of(TransformFamily.of(model), coordinates, all)
        .orElseThrow()
        .transform();
  }

  /** Relative to the size of the picture, at every point used. */
  private static void assertAgreed(List<PointPair> pairs, Transform ours, Transform theirs) {
    for (PointPair pair : pairs) {
      double apart = ours.apply(pair.from()).distance(theirs.apply(pair.from()));
      assertThat(apart / Simulation.PICTURE.diagonal()).isLessThan(AGREED);
    }
    double[] a = ours.matrix();
    double[] b = theirs.matrix();
    for (int i = 0; i < 9; i++) {
      double size = i % 3 == 2 ? Simulation.PICTURE.diagonal() : 1;
      double units = i >= 6 ? Simulation.PICTURE.diagonal() : 1;
      assertThat(Math.abs(a[i] - b[i]) * units / size).isLessThan(AGREED);
    }
  }

  private static Transform affineBySingularValues(List<PointPair> pairs) {
    RealMatrix design = new Array2DRowRealMatrix(2 * pairs.size(), 6);
    for (int i = 0; i < pairs.size(); i++) {
      Point p = pairs.get(i).from();
      design.setRow(2 * i, new double[] {p.x(), p.y(), 1, 0, 0, 0});
      design.setRow(2 * i + 1, new double[] {0, 0, 0, p.x(), p.y(), 1});
    }
    double[] m = solved(design, wanted(pairs));
    return Transform.of(m[0], m[1], m[2], m[3], m[4], m[5], 0, 0, 1);
  }

  private static Transform similarityBySingularValues(List<PointPair> pairs) {
    RealMatrix design = new Array2DRowRealMatrix(2 * pairs.size(), 4);
    for (int i = 0; i < pairs.size(); i++) {
      Point p = pairs.get(i).from();
      design.setRow(2 * i, new double[] {p.x(), -p.y(), 1, 0});
      design.setRow(2 * i + 1, new double[] {p.y(), p.x(), 0, 1});
    }
    double[] m = solved(design, wanted(pairs));
    return Transform.of(m[0], -m[1], m[2], m[1], m[0], m[3], 0, 0, 1);
  }

  private static double[] solved(RealMatrix design, RealVector wanted) {
    return new SingularValueDecomposition(design).getSolver().solve(wanted).toArray();
  }

  private static RealVector wanted(List<PointPair> pairs) {
    double[] values = new double[2 * pairs.size()];
    for (int i = 0; i < pairs.size(); i++) {
      values[2 * i] = pairs.get(i).to().x();
      values[2 * i + 1] = pairs.get(i).to().y();
    }
    return new ArrayRealVector(values);
  }

  /** Starts from the truth of the simulation, so the start owes nothing to our own solver. */
  private static Transform homographyByOptimiser(List<PointPair> pairs, Simulation simulation) {
    double[] start = simulation.truth.matrix();
    LeastSquaresBuilder problem =
        new LeastSquaresBuilder()
            .start(IntStream.range(0, 8).mapToDouble(i -> start[i]).toArray())
            .target(wanted(pairs).toArray())
            .model(numbers -> modelled(pairs, numbers))
            .lazyEvaluation(false)
            .maxEvaluations(2000)
            .maxIterations(2000);
    double[] m =
        new LevenbergMarquardtOptimizer(100, 1e-15, 1e-15, 1e-15, 1e-300)
            .optimize(problem.build())
            .getPoint()
            .toArray();
    return Transform.of(m[0], m[1], m[2], m[3], m[4], m[5], m[6], m[7], 1);
  }

  private static Pair<RealVector, RealMatrix> modelled(List<PointPair> pairs, RealVector numbers) {
    double[] m = numbers.toArray();
    RealVector values = new ArrayRealVector(2 * pairs.size());
    RealMatrix slopes = new Array2DRowRealMatrix(2 * pairs.size(), 8);
    for (int i = 0; i < pairs.size(); i++) {
      double x = pairs.get(i).from().x();
      double y = pairs.get(i).from().y();
      double w = m[6] * x + m[7] * y + 1;
      double u = (m[0] * x + m[1] * y + m[2]) / w;
      double v = (m[3] * x + m[4] * y + m[5]) / w;
      values.setEntry(2 * i, u);
      values.setEntry(2 * i + 1, v);
      slopes.setRow(2 * i, new double[] {x / w, y / w, 1 / w, 0, 0, 0, -u * x / w, -u * y / w});
      slopes.setRow(2 * i + 1, new double[] {0, 0, 0, x / w, y / w, 1 / w, -v * x / w, -v * y / w});
    }
    return new Pair<>(values, slopes);
  }
}
