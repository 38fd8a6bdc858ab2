package org.relegend.solve;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Factors the whole matrix (LU with pivots), rows brought to one size first: they reach from
 * picosiemens to thousands of siemens.
 */
final class DenseStep implements LinearStep {
  @Override
  public boolean solve(DMatrixRMaj slopes, double[] rest, double[] change) {
    int n = rest.length;
    DMatrixRMaj scaled = slopes.copy();
    DMatrixRMaj right = new DMatrixRMaj(n, 1, true, rest.clone());
    double[] scales = scale(scaled);
    for (int row = 0; row < n; row++) {
      right.data[row] *= scales[row];
    }
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.lu(n);
    if (!solver.setA(scaled)) {
      return false;
    }
    solver.solve(right, DMatrixRMaj.wrap(n, 1, change));
    return allFinite(change);
  }

  /** The inverse; nothing where there is none. */
  static java.util.Optional<DMatrixRMaj> inverse(DMatrixRMaj slopes) {
    int n = slopes.numRows;
    DMatrixRMaj scaled = slopes.copy();
    double[] scales = scale(scaled);
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.lu(n);
    if (!solver.setA(scaled)) {
      return java.util.Optional.empty();
    }
    DMatrixRMaj inverse = new DMatrixRMaj(n, n);
    solver.invert(inverse);
    for (int row = 0; row < n; row++) {
      for (int column = 0; column < n; column++) {
        inverse.data[row * n + column] *= scales[column];
      }
    }
    return allFinite(inverse.data) ? java.util.Optional.of(inverse) : java.util.Optional.empty();
  }

  private static double[] scale(DMatrixRMaj matrix) {
    int n = matrix.numRows;
    double[] scales = new double[n];
    for (int row = 0; row < n; row++) {
      double most = 0;
      for (int column = 0; column < n; column++) {
        most = Math.max(most, Math.abs(matrix.data[row * n + column]));
      }
      scales[row] = most > 0 ? 1 / most : 1;
      for (int column = 0; column < n; column++) {
        matrix.data[row * n + column] *= scales[row];
      }
    }
    return scales;
  }

  static boolean allFinite(double[] values) {
    for (double value : values) {
      if (!Double.isFinite(value)) {
        return false;
      }
    }
    return true;
  }
}
