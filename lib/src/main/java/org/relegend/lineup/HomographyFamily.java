package org.relegend.lineup;

import java.util.Arrays;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Perspective. Numbers: the matrix row by row up to m21, m22 being 1: the frame's origin is the
 * centroid of the points, which can't lie on the horizon of a picture that shows them.
 */
enum HomographyFamily implements TransformFamily {
  HOMOGRAPHY;

  private static final int SIZE = 8;

  /** Relative size below which a pivot or singular value counts as zero. */
  private static final double SINGULAR = 1e-9;

  private static final int STEPS = 100;

  /** Largest change of a number, in frame units, that ends the refinement: far below a pixel. */
  private static final double SETTLED = 1e-10;

  @Override
  public int size() {
    return SIZE;
  }

  @Override
  public Optional<double[]> solve(NormalisedPairs pairs, int[] members) {
    if (members.length < 4) {
      return Optional.empty();
    }
    return members.length == 4
        ? exact(pairs, members)
        : direct(pairs, members).map(start -> refined(pairs, members, start));
  }

  @Override
  public Optional<double[]> solve(NormalisedPairs pairs, int[] members, double[] near) {
    return members.length > 4 ? Optional.of(refined(pairs, members, near)) : solve(pairs, members);
  }

  /** The one transform through four pairs. */
  private static Optional<double[]> exact(NormalisedPairs pairs, int[] members) {
    DMatrixRMaj a = new DMatrixRMaj(SIZE, SIZE);
    DMatrixRMaj b = new DMatrixRMaj(SIZE, 1);
    for (int k = 0; k < 4; k++) {
      int i = members[k];
      double x = pairs.fromX[i];
      double y = pairs.fromY[i];
      double u = pairs.toX[i];
      double v = pairs.toY[i];
      TransformFamily.setRow(a, 2 * k, x, y, 1, 0, 0, 0, -u * x, -u * y);
      TransformFamily.setRow(a, 2 * k + 1, 0, 0, 0, x, y, 1, -v * x, -v * y);
      b.data[2 * k] = u;
      b.data[2 * k + 1] = v;
    }
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.linear(SIZE);
    if (!solver.setA(a) || solver.quality() < SINGULAR) {
      return Optional.empty();
    }
    DMatrixRMaj numbers = new DMatrixRMaj(SIZE, 1);
    solver.solve(b, numbers);
    return Optional.of(numbers.data);
  }

  /**
   * The normalised direct linear transform (Hartley and Zisserman, Multiple View Geometry,
   * algorithm 4.2): the right singular vector of the least singular value. It minimises an
   * algebraic error, so it is a start for {@link #refined}.
   */
  static Optional<double[]> direct(NormalisedPairs pairs, int[] members) {
    // filled up to nine rows at least, for a square of right singular vectors
    DMatrixRMaj a = new DMatrixRMaj(Math.max(9, 2 * members.length), 9);
    for (int k = 0; k < members.length; k++) {
      int i = members[k];
      double x = pairs.fromX[i];
      double y = pairs.fromY[i];
      double u = pairs.toX[i];
      double v = pairs.toY[i];
      TransformFamily.setRow(a, 2 * k, x, y, 1, 0, 0, 0, -u * x, -u * y, -u);
      TransformFamily.setRow(a, 2 * k + 1, 0, 0, 0, x, y, 1, -v * x, -v * y, -v);
    }
    SingularValueDecomposition_F64<DMatrixRMaj> svd =
        DecompositionFactory_DDRM.svd(a.numRows, 9, false, true, true);
    if (!svd.decompose(a)) {
      return Optional.empty();
    }
    double[] values = svd.getSingularValues();
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    if (sorted[1] < SINGULAR * sorted[8]) {
      return Optional.empty();
    }
    int least = 0;
    for (int i = 1; i < 9; i++) {
      least = values[i] < values[least] ? i : least;
    }
    DMatrixRMaj vectors = svd.getV(null, true);
    double last = vectors.get(least, 8);
    if (Math.abs(last) < SINGULAR) {
      return Optional.empty();
    }
    double[] numbers = new double[SIZE];
    for (int i = 0; i < SIZE; i++) {
      numbers[i] = vectors.get(least, i) / last;
    }
    return Optional.of(numbers);
  }

  /**
   * Levenberg-Marquardt on the distances in the second picture's frame, with the damping scaled by
   * the diagonal (Marquardt 1963).
   */
  private double[] refined(NormalisedPairs pairs, int[] members, double[] start) {
    double[] best = start;
    double cost = cost(pairs, members, best);
    double damping = 1e-4;
    DMatrixRMaj normal = new DMatrixRMaj(SIZE, SIZE);
    DMatrixRMaj slope = new DMatrixRMaj(SIZE, 1);
    DMatrixRMaj step = new DMatrixRMaj(SIZE, 1);
    boolean moved = true;
    for (int i = 0; i < STEPS && damping < 1e12; i++) {
      if (moved) {
        normalEquations(pairs, members, best, normal, slope);
      }
      DMatrixRMaj damped = normal.copy();
      for (int d = 0; d < SIZE; d++) {
        damped.add(d, d, damping * normal.get(d, d));
      }
      moved = false;
      if (CommonOps_DDRM.solve(damped, slope, step)) {
        boolean settled = CommonOps_DDRM.elementMaxAbs(step) < SETTLED;
        double[] trial = best.clone();
        for (int d = 0; d < SIZE; d++) {
          trial[d] += step.data[d];
        }
        double trialCost = cost(pairs, members, trial);
        if (trialCost <= cost) {
          best = trial;
          cost = trialCost;
          moved = true;
        }
        if (settled) {
          break;
        }
      }
      damping *= moved ? 0.1 : 10;
    }
    return best;
  }

  private void normalEquations(
      NormalisedPairs pairs, int[] members, double[] n, DMatrixRMaj normal, DMatrixRMaj slope) {
    normal.zero();
    slope.zero();
    double[][] rows = new double[2][SIZE];
    for (int i : members) {
      double x = pairs.fromX[i];
      double y = pairs.fromY[i];
      derivatives(n, x, y, rows);
      double w = n[6] * x + n[7] * y + 1;
      double dx = pairs.toX[i] - (n[0] * x + n[1] * y + n[2]) / w;
      double dy = pairs.toY[i] - (n[3] * x + n[4] * y + n[5]) / w;
      for (int r = 0; r < SIZE; r++) {
        slope.data[r] += rows[0][r] * dx + rows[1][r] * dy;
        for (int c = 0; c < SIZE; c++) {
          normal.data[r * SIZE + c] += rows[0][r] * rows[0][c] + rows[1][r] * rows[1][c];
        }
      }
    }
  }

  private static double cost(NormalisedPairs pairs, int[] members, double[] n) {
    double sum = 0;
    for (int i : members) {
      double x = pairs.fromX[i];
      double y = pairs.fromY[i];
      double w = n[6] * x + n[7] * y + 1;
      double dx = pairs.toX[i] - (n[0] * x + n[1] * y + n[2]) / w;
      double dy = pairs.toY[i] - (n[3] * x + n[4] * y + n[5]) / w;
      sum += dx * dx + dy * dy;
    }
    return sum;
  }

  @Override
  public double[] matrix(double[] n) {
    return new double[] {n[0], n[1], n[2], n[3], n[4], n[5], n[6], n[7], 1};
  }

  @Override
  public void derivatives(double[] n, double x, double y, double[][] rows) {
    double w = n[6] * x + n[7] * y + 1;
    double u = (n[0] * x + n[1] * y + n[2]) / w;
    double v = (n[3] * x + n[4] * y + n[5]) / w;
    double[] first = rows[0];
    double[] second = rows[1];
    Arrays.fill(first, 0);
    Arrays.fill(second, 0);
    first[0] = x / w;
    first[1] = y / w;
    first[2] = 1 / w;
    first[6] = -u * x / w;
    first[7] = -u * y / w;
    second[3] = x / w;
    second[4] = y / w;
    second[5] = 1 / w;
    second[6] = -v * x / w;
    second[7] = -v * y / w;
  }
}
