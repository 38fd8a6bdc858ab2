package org.relegend.twin;

import java.util.Optional;
import org.relegend.lineup.Transform;
import org.relegend.map.Point;

/**
 * What a photo shows around a placed part, to be found again around its twin by normalised
 * correlation: the mean of the product of both brightnesses, each less its mean and over its
 * deviation; 1 for the same up to light and contrast.
 */
final class PhotoTemplate {
  /** Below this the two don't show the same sort of part. */
  static final double LEAST = 0.75;

  /** How much better the place must be than any other. */
  private static final double CLEAR = 0.08;

  /** Half the cut-out's side, in pixels of the photo. */
  private static final int HALF = 48;

  private static final int STEP = 3;
  private static final double FAR = 12;

  private final BrightnessImage photo;
  private final double[] dx;
  private final double[] dy;
  private final double[] values;
  private final double size;

  /**
   * @param turned carries the surroundings of the part onto those of its twin
   */
  PhotoTemplate(BrightnessImage photo, Point part, Transform turned) {
    this.photo = photo;
    int side = 2 * HALF / STEP + 1;
    dx = new double[side * side];
    dy = new double[side * side];
    values = new double[side * side];
    Point middle = turned.apply(part);
    double sum = 0;
    int i = 0;
    for (int y = -HALF; y <= HALF; y += STEP) {
      for (int x = -HALF; x <= HALF; x += STEP) {
        Point there = turned.apply(part.plus(x, y));
        dx[i] = there.x() - middle.x();
        dy[i] = there.y() - middle.y();
        values[i] = photo.at(part.x() + x, part.y() + y);
        sum += values[i++];
      }
    }
    double squares = 0;
    for (i = 0; i < values.length; i++) {
      values[i] -= sum / values.length;
      squares += values[i] * values[i];
    }
    size = Math.sqrt(squares);
  }

  /** A place and how well it fits there. */
  record Found(Point at, double correlation) {}

  /** The one best place within reach of a point; none where nothing fits, or two places do. */
  Optional<Found> near(Point expected, double reach) {
    Found best = new Found(expected, -1);
    double other = -1;
    int steps = (int) Math.ceil(reach / STEP);
    double[][] all = new double[2 * steps + 1][2 * steps + 1];
    for (int r = -steps; r <= steps; r++) {
      for (int c = -steps; c <= steps; c++) {
        Point at = expected.plus(c * STEP, r * STEP);
        boolean inside = Math.hypot(c, r) * STEP <= reach && photo.has(at.x(), at.y());
        double correlation = inside ? correlation(at) : -1;
        all[r + steps][c + steps] = correlation;
        best = correlation > best.correlation() ? new Found(at, correlation) : best;
      }
    }
    for (int r = -steps; r <= steps; r++) {
      for (int c = -steps; c <= steps; c++) {
        Point at = expected.plus(c * STEP, r * STEP);
        if (Math.hypot(at.x() - best.at().x(), at.y() - best.at().y()) > FAR) {
          other = Math.max(other, all[r + steps][c + steps]);
        }
      }
    }
    return best.correlation() < LEAST || other > best.correlation() - CLEAR
        ? Optional.empty()
        : Optional.of(fine(best));
  }

  private Found fine(Found coarse) {
    Found best = coarse;
    for (double step = STEP / 2.0; step > 0.4; step /= 2) {
      Found start = best;
      for (int r = -1; r <= 1; r++) {
        for (int c = -1; c <= 1; c++) {
          Point at = start.at().plus(c * step, r * step);
          double correlation = correlation(at);
          best = correlation > best.correlation() ? new Found(at, correlation) : best;
        }
      }
    }
    return best;
  }

  private double correlation(Point at) {
    double sum = 0;
    double squares = 0;
    double product = 0;
    for (int i = 0; i < values.length; i++) {
      double value = photo.at(at.x() + dx[i], at.y() + dy[i]);
      sum += value;
      squares += value * value;
      product += value * values[i];
    }
    double spread = Math.sqrt(Math.max(0, squares - sum * sum / values.length));
    return spread == 0 || size == 0 ? -1 : product / (size * spread);
  }
}
