package org.relegend.lineup;

import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/** Families whose carried point is linear in the numbers: solved by one QR decomposition. */
enum LinearFamily implements TransformFamily {
  /** Numbers: dx, dy. */
  SHIFT(2) {
    @Override
    public double[] matrix(double[] n) {
      return new double[] {1, 0, n[0], 0, 1, n[1], 0, 0, 1};
    }

    @Override
    public void derivatives(double[] n, double x, double y, double[][] rows) {
      set(rows[0], 1, 0);
      set(rows[1], 0, 1);
    }

    @Override
    double offsetX(double x) {
      return x;
    }

    @Override
    double offsetY(double y) {
      return y;
    }
  },

  /** Numbers: a, b, dx, dy of x' = a x - b y + dx, y' = b x + a y + dy. */
  SIMILARITY(4) {
    @Override
    public double[] matrix(double[] n) {
      return new double[] {n[0], -n[1], n[2], n[1], n[0], n[3], 0, 0, 1};
    }

    @Override
    public void derivatives(double[] n, double x, double y, double[][] rows) {
      set(rows[0], x, -y, 1, 0);
      set(rows[1], y, x, 0, 1);
    }
  },

  /** Numbers: the matrix' first two rows. */
  AFFINE(6) {
    @Override
    public double[] matrix(double[] n) {
      return new double[] {n[0], n[1], n[2], n[3], n[4], n[5], 0, 0, 1};
    }

    @Override
    public void derivatives(double[] n, double x, double y, double[][] rows) {
      set(rows[0], x, y, 1, 0, 0, 0);
      set(rows[1], 0, 0, 0, x, y, 1);
    }
  };

  /** Smallest over largest diagonal of R below which the pairs leave the transform open. */
  private static final double SINGULAR = 1e-10;

  private final int size;

  LinearFamily(int size) {
    this.size = size;
  }

  @Override
  public int size() {
    return size;
  }

  /** What x' is when all numbers are zero. */
  double offsetX(double x) {
    return 0;
  }

  double offsetY(double y) {
    return 0;
  }

  @Override
  public Optional<double[]> solve(NormalisedPairs pairs, int[] members) {
    if (2 * members.length < size) {
      return Optional.empty();
    }
    DMatrixRMaj design = new DMatrixRMaj(2 * members.length, size);
    DMatrixRMaj wanted = new DMatrixRMaj(2 * members.length, 1);
    double[][] rows = new double[2][size];
    for (int k = 0; k < members.length; k++) {
      int i = members[k];
      derivatives(rows[0], pairs.fromX[i], pairs.fromY[i], rows);
      TransformFamily.setRow(design, 2 * k, rows[0]);
      TransformFamily.setRow(design, 2 * k + 1, rows[1]);
      wanted.data[2 * k] = pairs.toX[i] - offsetX(pairs.fromX[i]);
      wanted.data[2 * k + 1] = pairs.toY[i] - offsetY(pairs.fromY[i]);
    }
    LinearSolverDense<DMatrixRMaj> solver =
        LinearSolverFactory_DDRM.leastSquares(2 * members.length, size);
    DMatrixRMaj numbers = new DMatrixRMaj(size, 1);
    if (!solver.setA(design) || solver.quality() < SINGULAR) {
      return Optional.empty();
    }
    solver.solve(wanted, numbers);
    return Optional.of(numbers.data);
  }

  private static void set(double[] row, double... values) {
    System.arraycopy(values, 0, row, 0, values.length);
  }
}
