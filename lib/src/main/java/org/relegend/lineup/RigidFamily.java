package org.relegend.lineup;

import java.util.Optional;

/**
 * Turn and shift without scale. Numbers: angle, dx, dy. The angle of least squares has a closed
 * form: the direction of the summed products of the centred points (Umeyama 1991, eq. 40, in the
 * plane and without reflection).
 */
enum RigidFamily implements TransformFamily {
  RIGID;

  /** Length of the summed products, in squared frame units, below which there is no direction. */
  private static final double NONE = 1e-12;

  @Override
  public int size() {
    return 3;
  }

  @Override
  public Optional<double[]> solve(NormalisedPairs pairs, int[] members) {
    double fx = mean(pairs.fromX, members);
    double fy = mean(pairs.fromY, members);
    double tx = mean(pairs.toX, members);
    double ty = mean(pairs.toY, members);
    double along = 0;
    double across = 0;
    for (int i : members) {
      double x = pairs.fromX[i] - fx;
      double y = pairs.fromY[i] - fy;
      along += x * (pairs.toX[i] - tx) + y * (pairs.toY[i] - ty);
      across += x * (pairs.toY[i] - ty) - y * (pairs.toX[i] - tx);
    }
    if (members.length < 2 || Math.hypot(along, across) < NONE) {
      return Optional.empty();
    }
    double angle = Math.atan2(across, along);
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return Optional.of(new double[] {angle, tx - c * fx + s * fy, ty - s * fx - c * fy});
  }

  @Override
  public double[] matrix(double[] n) {
    double c = Math.cos(n[0]);
    double s = Math.sin(n[0]);
    return new double[] {c, -s, n[1], s, c, n[2], 0, 0, 1};
  }

  @Override
  public void derivatives(double[] n, double x, double y, double[][] rows) {
    double c = Math.cos(n[0]);
    double s = Math.sin(n[0]);
    rows[0][0] = -s * x - c * y;
    rows[0][1] = 1;
    rows[0][2] = 0;
    rows[1][0] = c * x - s * y;
    rows[1][1] = 0;
    rows[1][2] = 1;
  }

  private static double mean(double[] values, int[] members) {
    double sum = 0;
    for (int i : members) {
      sum += values[i];
    }
    return sum / members.length;
  }
}
