package org.relegend.lineup;

import java.util.Arrays;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.MatrixFeatures_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * One least-squares transform through some members of the pairs, with what its own scatter says of
 * its error. Lengths are in the second picture's frame. The statistics are the classical ones of
 * least squares, taken at the solution (linear in the small errors): the covariance of the numbers
 * is s^2 (J'J)^-1, s^2 being the sum of squares over its degrees of freedom; the leverage of a pair
 * is the 2x2 block G (J'J)^-1 G' of its own derivatives G.
 */
final class LeastSquaresSolution {
  /** Smallest over largest pivot of J'J (a squared length ratio) for the fit to be determined. */
  private static final double SINGULAR = 1e-12;

  final TransformFamily family;
  final NormalisedPairs pairs;
  final int[] members;
  final double[] numbers;

  /** Sum of the squared distances over the members. */
  final double squares;

  private final double[] matrix;
  private final DMatrixRMaj inverse;

  private LeastSquaresSolution(
      TransformFamily family,
      NormalisedPairs pairs,
      int[] members,
      double[] numbers,
      DMatrixRMaj inverse) {
    this.family = family;
    this.pairs = pairs;
    this.members = members;
    this.numbers = numbers;
    this.inverse = inverse;
    matrix = family.matrix(numbers);
    double sum = 0;
    for (int i : members) {
      sum += squaredResidual(i);
    }
    squares = sum;
  }

  static Optional<LeastSquaresSolution> of(
      TransformFamily family, NormalisedPairs pairs, int[] members) {
    return family
        .solve(pairs, members)
        .flatMap(
            numbers ->
                inverse(family, pairs, members, numbers)
                    .map(
                        inverse ->
                            new LeastSquaresSolution(family, pairs, members, numbers, inverse)));
  }

  /** The fit of the other members. */
  Optional<LeastSquaresSolution> without(int member) {
    int[] rest = Arrays.stream(members).filter(i -> i != member).toArray();
    return family
        .solve(pairs, rest, numbers)
        .flatMap(
            less ->
                inverse(family, pairs, rest, less)
                    .map(inverse -> new LeastSquaresSolution(family, pairs, rest, less, inverse)));
  }

  private static Optional<DMatrixRMaj> inverse(
      TransformFamily family, NormalisedPairs pairs, int[] members, double[] numbers) {
    int size = family.size();
    DMatrixRMaj normal = new DMatrixRMaj(size, size);
    double[][] rows = new double[2][size];
    for (int i : members) {
      family.derivatives(numbers, pairs.fromX[i], pairs.fromY[i], rows);
      for (double[] row : rows) {
        for (int r = 0; r < size; r++) {
          for (int c = 0; c < size; c++) {
            normal.data[r * size + c] += row[r] * row[c];
          }
        }
      }
    }
    double[] m = family.matrix(numbers);
    double determinant =
        m[0] * (m[4] * m[8] - m[5] * m[7])
            - m[1] * (m[3] * m[8] - m[5] * m[6])
            + m[2] * (m[3] * m[7] - m[4] * m[6]);
    if (MatrixFeatures_DDRM.hasUncountable(normal) || Math.abs(determinant) < SINGULAR) {
      return Optional.empty();
    }
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(size);
    if (!solver.setA(normal) || solver.quality() < SINGULAR) {
      return Optional.empty();
    }
    DMatrixRMaj inverse = new DMatrixRMaj(size, size);
    solver.invert(inverse);
    return Optional.of(inverse);
  }

  /** Degrees of freedom: two for each pair, less the numbers fitted. */
  int freedom() {
    return 2 * members.length - family.size();
  }

  /** The variance of one coordinate as the members scatter; needs freedom. */
  double variance() {
    return squares / freedom();
  }

  double residualX(int i) {
    return pairs.toX[i] - row(0, i) / row(2, i);
  }

  double residualY(int i) {
    return pairs.toY[i] - row(1, i) / row(2, i);
  }

  double squaredResidual(int i) {
    double dx = residualX(i);
    double dy = residualY(i);
    return dx * dx + dy * dy;
  }

  /** Covariance of the point carried from (x, y), per unit variance of a coordinate. */
  SymmetricMatrix leverage(double x, double y) {
    int size = family.size();
    double[][] g = new double[2][size];
    family.derivatives(numbers, x, y, g);
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int r = 0; r < size; r++) {
      double first = 0;
      double second = 0;
      for (int c = 0; c < size; c++) {
        first += inverse.data[r * size + c] * g[0][c];
        second += inverse.data[r * size + c] * g[1][c];
      }
      xx += g[0][r] * first;
      xy += g[0][r] * second;
      yy += g[1][r] * second;
    }
    return new SymmetricMatrix(xx, xy, yy);
  }

  SymmetricMatrix leverage(int i) {
    return leverage(pairs.fromX[i], pairs.fromY[i]);
  }

  /**
   * Squared residual of a member as seen by the rest, in units of the scatter per coordinate: r' (1
   * - H)^-1 r. Dividing by twice the variance of the rest gives a value of the F distribution.
   */
  double deletedSquare(int member) {
    SymmetricMatrix free = SymmetricMatrix.ONE.minus(leverage(member));
    if (free.determinant() < 1e-9 || free.trace() <= 0) {
      return 0; // the fit rests on this pair alone in some direction: nothing can speak against it
    }
    return free.inverse().of(residualX(member), residualY(member));
  }

  /** The same for a pair that is no member, r' (1 + H)^-1 r. */
  double outsideSquare(int i) {
    return SymmetricMatrix.ONE.plus(leverage(i)).inverse().of(residualX(i), residualY(i));
  }

  /** The transform between the pictures. */
  Transform transform() {
    return pairs.unframed(Transform.of(matrix));
  }

  /** Positive where a pair lies on the same side of the horizon as the members' centroid. */
  double denominator(int i) {
    return row(2, i);
  }

  private double row(int row, int i) {
    return matrix[3 * row] * pairs.fromX[i]
        + matrix[3 * row + 1] * pairs.fromY[i]
        + matrix[3 * row + 2];
  }
}
