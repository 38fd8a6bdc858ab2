package org.relegend.lineup;

import java.util.Optional;
import org.ejml.data.DMatrixRMaj;

/**
 * A family of transforms between two frames: how one is found by least squares, and how a carried
 * point depends on the numbers that describe it. Members are indices of pairs; squares are those of
 * the distances in the second picture's frame.
 */
interface TransformFamily {

  /** How many numbers describe a transform of this family. */
  int size();

  /**
   * The transform with the least sum of squares over the members, exact where they just fix it;
   * none where they leave it open.
   */
  Optional<double[]> solve(NormalisedPairs pairs, int[] members);

  /** The same from numbers known to be near, where that is quicker. */
  default Optional<double[]> solve(NormalisedPairs pairs, int[] members, double[] near) {
    return solve(pairs, members);
  }

  /** The matrix between the frames that the numbers describe, row by row; it may be singular. */
  double[] matrix(double[] numbers);

  /**
   * Writes the derivatives of the carried point by the numbers: those of x' in the first row, those
   * of y' in the second.
   */
  void derivatives(double[] numbers, double x, double y, double[][] rows);

  static TransformFamily of(TransformModel model) {
    return switch (model) {
      case SHIFT -> LinearFamily.SHIFT;
      case RIGID -> RigidFamily.RIGID;
      case SIMILARITY -> LinearFamily.SIMILARITY;
      case AFFINE -> LinearFamily.AFFINE;
      case HOMOGRAPHY -> HomographyFamily.HOMOGRAPHY;
    };
  }

  static void setRow(DMatrixRMaj matrix, int row, double... values) {
    System.arraycopy(values, 0, matrix.data, row * matrix.numCols, values.length);
  }
}
