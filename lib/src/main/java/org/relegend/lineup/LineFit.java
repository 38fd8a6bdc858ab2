package org.relegend.lineup;

import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.relegend.map.Point;

/**
 * Brings points onto lines by a perspective: Gauss-Newton on the distances across the lines only,
 * damped (Marquardt 1963), so that a direction of which no line tells stays as it was. A point far
 * from its line counts little, by weights after Geman and McClure.
 */
final class LineFit {
  private static final double DAMPING = 1e-3;

  private LineFit() {}

  /** A point, its foot on a line, and the direction across that line, of length 1. */
  record Pull(PointPair pair, double acrossX, double acrossY) {
    /** How far the line is from where the point is carried. */
    double off(Transform carry) {
      Point at = carry.apply(pair.from());
      return acrossX * (pair.to().x() - at.x()) + acrossY * (pair.to().y() - at.y());
    }
  }

  /**
   * One step from here towards the lines.
   *
   * @param usual the distance, in units of the second picture, from which on a point counts less
   */
  static Transform step(List<Pull> pulls, Transform now, double usual) {
    NormalisedPairs frame =
        NormalisedPairs.of(pulls.stream().map(Pull::pair).toList(), false, false);
    HomographyFamily family = HomographyFamily.HOMOGRAPHY;
    int size = family.size();
    double[] numbers = numbers(frame, now, size);
    DMatrixRMaj normal = new DMatrixRMaj(size, size);
    DMatrixRMaj slope = new DMatrixRMaj(size, 1);
    double[][] rows = new double[2][size];
    for (int i = 0; i < pulls.size(); i++) {
      Pull pull = pulls.get(i);
      family.derivatives(numbers, frame.fromX[i], frame.fromY[i], rows);
      double off = pull.off(now);
      double weight = Math.pow(1 + off * off / (usual * usual), -2);
      double[] row = new double[size];
      for (int k = 0; k < size; k++) {
        row[k] = pull.acrossX() * rows[0][k] + pull.acrossY() * rows[1][k];
      }
      for (int r = 0; r < size; r++) {
        slope.data[r] += weight * row[r] * off * frame.toScale;
        for (int c = 0; c < size; c++) {
          normal.data[r * size + c] += weight * row[r] * row[c];
        }
      }
    }
    for (int d = 0; d < size; d++) {
      normal.add(d, d, DAMPING * CommonOps_DDRM.trace(normal) / size);
    }
    DMatrixRMaj change = new DMatrixRMaj(size, 1);
    if (!CommonOps_DDRM.solve(normal, slope, change)) {
      return now;
    }
    for (int k = 0; k < size; k++) {
      numbers[k] += change.data[k];
    }
    return frame.unframed(Transform.of(family.matrix(numbers)));
  }

  private static double[] numbers(NormalisedPairs frame, Transform now, int size) {
    Transform framed = frame.toFrame.after(now).after(frame.fromFrame.inverse());
    double last = framed.denominator(new Point(0, 0));
    double[] numbers = new double[size];
    for (int i = 0; i < size; i++) {
      numbers[i] = framed.matrix()[i] / last;
    }
    return numbers;
  }
}
