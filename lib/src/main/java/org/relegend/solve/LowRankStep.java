package org.relegend.solve;

import java.util.Arrays;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Starts from the inverse of a like matrix, of which a few rows differ (Woodbury's formula; see
 * Hager, SIAM Review 31, 1989). Where many rows differ, the whole is factored instead.
 */
final class LowRankStep implements LinearStep {
  private final DMatrixRMaj like;
  private final DMatrixRMaj inverse;
  private final LinearStep whole = new DenseStep();

  LowRankStep(DMatrixRMaj like, DMatrixRMaj inverse) {
    this.like = like;
    this.inverse = inverse;
  }

  /** The rows that differ, and the small system that brings them in. */
  private static final class Update {
    private final int[] rows;
    private final DMatrixRMaj difference;
    private final DMatrixRMaj columns;
    private final LinearSolverDense<DMatrixRMaj> small;

    Update(
        int[] rows,
        DMatrixRMaj difference,
        DMatrixRMaj columns,
        LinearSolverDense<DMatrixRMaj> small) {
      this.rows = rows;
      this.difference = difference;
      this.columns = columns;
      this.small = small;
    }
  }

  @Override
  public boolean solve(DMatrixRMaj slopes, double[] rest, double[] change) {
    Optional<Update> update = update(slopes);
    if (update.isEmpty()) {
      return whole.solve(slopes, rest, change);
    }
    DMatrixRMaj answer = DMatrixRMaj.wrap(rest.length, 1, change);
    CommonOps_DDRM.mult(inverse, DMatrixRMaj.wrap(rest.length, 1, rest), answer);
    Update found = update.get();
    if (found.rows.length > 0) {
      DMatrixRMaj small = new DMatrixRMaj(found.rows.length, 1);
      CommonOps_DDRM.mult(found.difference, answer, small);
      found.small.solve(small.copy(), small);
      CommonOps_DDRM.multAdd(-1, found.columns, small, answer);
    }
    return DenseStep.allFinite(change) || whole.solve(slopes, rest, change);
  }

  /** The inverse of the changed matrix; nothing where there is none. */
  Optional<DMatrixRMaj> inverseOf(DMatrixRMaj slopes) {
    Optional<Update> update = update(slopes);
    if (update.isEmpty()) {
      return DenseStep.inverse(slopes);
    }
    Update found = update.get();
    DMatrixRMaj result = inverse.copy();
    if (found.rows.length > 0) {
      DMatrixRMaj small = new DMatrixRMaj(found.rows.length, inverse.numCols);
      CommonOps_DDRM.mult(found.difference, inverse, small);
      DMatrixRMaj solved = new DMatrixRMaj(found.rows.length, inverse.numCols);
      found.small.solve(small, solved);
      CommonOps_DDRM.multAdd(-1, found.columns, solved, result);
    }
    return DenseStep.allFinite(result.data) ? Optional.of(result) : DenseStep.inverse(slopes);
  }

  private Optional<Update> update(DMatrixRMaj slopes) {
    int n = slopes.numRows;
    int[] rows = differing(slopes);
    int k = rows.length;
    if (k > n / 2) {
      return Optional.empty();
    }
    DMatrixRMaj difference = new DMatrixRMaj(k, n);
    DMatrixRMaj columns = new DMatrixRMaj(n, k);
    for (int r = 0; r < k; r++) {
      for (int column = 0; column < n; column++) {
        int place = rows[r] * n + column;
        difference.data[r * n + column] = slopes.data[place] - like.data[place];
        columns.data[column * k + r] = inverse.data[column * n + rows[r]];
      }
    }
    DMatrixRMaj small = new DMatrixRMaj(k, k);
    CommonOps_DDRM.mult(difference, columns, small);
    for (int r = 0; r < k; r++) {
      small.data[r * k + r] += 1;
    }
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.lu(Math.max(1, k));
    boolean possible = k == 0 || solver.setA(small);
    return possible ? Optional.of(new Update(rows, difference, columns, solver)) : Optional.empty();
  }

  /** Rows in which some slope differs by more than rounding. */
  private int[] differing(DMatrixRMaj slopes) {
    int n = slopes.numRows;
    int[] rows = new int[n];
    int count = 0;
    for (int row = 0; row < n; row++) {
      if (differs(slopes, row * n, n)) {
        rows[count++] = row;
      }
    }
    return Arrays.copyOf(rows, count);
  }

  private boolean differs(DMatrixRMaj slopes, int from, int count) {
    for (int place = from; place < from + count; place++) {
      double old = like.data[place];
      if (Math.abs(slopes.data[place] - old) > 1e-7 * Math.abs(old)) {
        return true;
      }
    }
    return false;
  }
}
