package org.relegend.solve;

import org.ejml.data.DMatrixRMaj;

/** Solves the linear equations of one step of Newton's method. */
interface LinearStep {
  /**
   * @param slopes the matrix, square; kept as it is
   * @param rest the right side
   * @param change the answer, in place
   * @return whether there is one
   */
  boolean solve(DMatrixRMaj slopes, double[] rest, double[] change);
}
