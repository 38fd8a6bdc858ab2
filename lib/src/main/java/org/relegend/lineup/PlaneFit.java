package org.relegend.lineup;

import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.relegend.map.Point;

/**
 * The perspective of the board itself among matches that also lie on parts above it: weighted least
 * squares with weights after Geman and McClure, 1 / (1 + (r/c)^2)^2, whose scale c shrinks from
 * coarse to fine, so that the fit settles on the plane that most matches share.
 */
final class PlaneFit {
  private static final double SHRINK = 0.7;
  private static final int STEPS = 3;

  private PlaneFit() {}

  /** From scale {@code coarse} to scale {@code fine}, in units of the second picture. */
  static Transform of(List<PointPair> pairs, Transform start, double coarse, double fine) {
    NormalisedPairs coordinates = NormalisedPairs.of(pairs, false, false);
    double[] numbers = numbers(coordinates, start);
    for (double scale = coarse; scale > fine; scale *= SHRINK) {
      for (int i = 0; i < STEPS; i++) {
        step(coordinates, numbers, scale * coordinates.toScale);
      }
    }
    for (int i = 0; i < STEPS * STEPS; i++) {
      step(coordinates, numbers, fine * coordinates.toScale);
    }
    return coordinates.unframed(Transform.of(HomographyFamily.HOMOGRAPHY.matrix(numbers)));
  }

  private static double[] numbers(NormalisedPairs coordinates, Transform start) {
    Transform framed = coordinates.toFrame.after(start).after(coordinates.fromFrame.inverse());
    double last = framed.denominator(new Point(0, 0));
    double[] numbers = new double[HomographyFamily.HOMOGRAPHY.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = framed.matrix()[i] / last;
    }
    return numbers;
  }

  /** One Gauss-Newton step with the weights held; changes the numbers. */
  private static void step(NormalisedPairs pairs, double[] numbers, double scale) {
    int size = numbers.length;
    DMatrixRMaj normal = new DMatrixRMaj(size, size);
    DMatrixRMaj slope = new DMatrixRMaj(size, 1);
    double[][] rows = new double[2][size];
    double[] m = HomographyFamily.HOMOGRAPHY.matrix(numbers);
    for (int i = 0; i < pairs.size(); i++) {
      double x = pairs.fromX[i];
      double y = pairs.fromY[i];
      HomographyFamily.HOMOGRAPHY.derivatives(numbers, x, y, rows);
      double w = m[6] * x + m[7] * y + m[8];
      double dx = pairs.toX[i] - (m[0] * x + m[1] * y + m[2]) / w;
      double dy = pairs.toY[i] - (m[3] * x + m[4] * y + m[5]) / w;
      double ratio = 1 + (dx * dx + dy * dy) / (scale * scale);
      double weight = 1 / (ratio * ratio);
      for (int r = 0; r < size; r++) {
        slope.data[r] += weight * (rows[0][r] * dx + rows[1][r] * dy);
        for (int c = 0; c < size; c++) {
          normal.data[r * size + c] += weight * (rows[0][r] * rows[0][c] + rows[1][r] * rows[1][c]);
        }
      }
    }
    DMatrixRMaj change = new DMatrixRMaj(size, 1);
    if (CommonOps_DDRM.solve(normal, slope, change)) {
      for (int r = 0; r < size; r++) {
        numbers[r] += change.data[r];
      }
    }
  }
}
