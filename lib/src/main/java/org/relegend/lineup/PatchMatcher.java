package org.relegend.lineup;

import boofcv.struct.image.GrayF32;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.relegend.map.Point;

/**
 * Finds small patches of one picture on another that is roughly lined up already. The other picture
 * is first drawn into the frame of the first, so that patches differ by a small shift only, which
 * the highest normalised cross-correlation gives, to parts of a pixel by a parabola through its
 * peak. It takes no notice of brightness or contrast, so faint tracks seen through a board serve
 * too.
 */
final class PatchMatcher {
  /** Least correlation of a match. */
  private static final double ALIKE = 0.7;

  /** Least correlation at one of the four next shifts of what is looked at. */
  private static final double BESIDE = 0.3;

  /** How much lower the next best place must correlate for the best to be clear. */
  private static final double CLEAR = 0.05;

  /** Least variance of a patch, in squared grey levels; below lies noise. */
  private static final double FLAT = 1;

  private final GreyImage.Scaled from;
  private final GreyImage.Scaled to;

  /** Picture cells to a row; one patch is tried in each. */
  private final int cells;

  /** Patches are squares of 2 radius + 1 pixels. */
  private final int radius;

  /** Of the first picture: the same whatever the guess is. */
  private final List<Patch> patches;

  PatchMatcher(GreyImage.Scaled from, GreyImage.Scaled to, int cells, int radius) {
    this.from = from;
    this.to = to;
    this.cells = cells;
    this.radius = radius;
    patches = distinctive();
  }

  /**
   * Pairs of full-size points, one at most for each cell of the first picture.
   *
   * @param guess the line-up so far, between full-size pictures
   * @param reach how far off the guess may be, in pixels of the scaled first picture
   */
  List<PointPair> match(Transform guess, int reach) {
    Drawn drawn = new Drawn(guess);
    return patches.parallelStream()
        .map(patch -> drawn.find(patch, reach))
        .flatMap(Optional::stream)
        .toList();
  }

  private List<Patch> distinctive() {
    GrayF32 a = from.pixels();
    int side = Math.max(4, (a.width + cells - 1) / cells);
    int columns = (a.width + side - 1) / side;
    int rows = (a.height + side - 1) / side;
    return IntStream.range(0, rows * columns)
        .parallel()
        .mapToObj(cell -> distinctive(cell % columns * side, cell / columns * side, side))
        .flatMap(Optional::stream)
        .toList();
  }

  /** A patch of the first picture: its middle pixel and its brightness less the mean. */
  @SuppressWarnings("ArrayRecordComponent") // made and read here only, never compared
  private record Patch(int x, int y, float[] differences, double energy) {}

  /** The patch in a cell that a shift in any direction changes most (Shi and Tomasi 1994). */
  private Optional<Patch> distinctive(int left, int top, int side) {
    GrayF32 a = from.pixels();
    int step = Math.max(2, side / 6);
    double best = 0;
    int x = -1;
    int y = -1;
    int edge = radius + 1;
    for (int v = Math.max(top, edge); v < Math.min(top + side, a.height - edge); v += step) {
      for (int u = Math.max(left, edge); u < Math.min(left + side, a.width - edge); u += step) {
        double strength = cornerness(u, v);
        if (strength > best) {
          best = strength;
          x = u;
          y = v;
        }
      }
    }
    return x < 0 ? Optional.empty() : cut(x, y);
  }

  /** The lesser eigenvalue of the summed gradient products. */
  private double cornerness(int x, int y) {
    GrayF32 a = from.pixels();
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int v = y - radius; v <= y + radius; v += 2) {
      for (int u = x - radius; u <= x + radius; u += 2) {
        int i = v * a.width + u;
        double dx = a.data[i + 1] - a.data[i - 1];
        double dy = a.data[i + a.width] - a.data[i - a.width];
        xx += dx * dx;
        xy += dx * dy;
        yy += dy * dy;
      }
    }
    return new SymmetricMatrix(xx, xy, yy).smallestEigenvalue();
  }

  private Optional<Patch> cut(int x, int y) {
    GrayF32 a = from.pixels();
    int size = 2 * radius + 1;
    float[] differences = new float[size * size];
    double sum = 0;
    for (int k = 0; k < differences.length; k++) {
      differences[k] = a.data[(y - radius + k / size) * a.width + x - radius + k % size];
      sum += differences[k];
    }
    double energy = 0;
    for (int k = 0; k < differences.length; k++) {
      differences[k] -= (float) (sum / differences.length);
      energy += differences[k] * differences[k];
    }
    return energy < FLAT * differences.length
        ? Optional.empty()
        : Optional.of(new Patch(x, y, differences, energy));
  }

  /** The second picture in the frame of the first, with running sums for means and variances. */
  private final class Drawn {
    private final Transform guess;
    private final Transform between;
    private final GrayF32 image;
    private final double[] sums;
    private final double[] squares;

    Drawn(Transform guess) {
      this.guess = guess;
      between = to.toFull().inverse().after(guess).after(from.toFull());
      image = new GrayF32(from.pixels().width, from.pixels().height);
      IntStream.range(0, image.height).parallel().forEach(this::drawRow);
      int stride = image.width + 1;
      sums = new double[stride * (image.height + 1)];
      squares = new double[stride * (image.height + 1)];
      for (int y = 0; y < image.height; y++) {
        double row = 0;
        double rowSquares = 0;
        for (int x = 0; x < image.width; x++) {
          double value = image.data[y * image.width + x];
          row += value;
          rowSquares += value * value;
          sums[(y + 1) * stride + x + 1] = sums[y * stride + x + 1] + row;
          squares[(y + 1) * stride + x + 1] = squares[y * stride + x + 1] + rowSquares;
        }
      }
    }

    /** Bilinear; zero outside the second picture, where {@link #covered} lets nothing be sought. */
    private void drawRow(int y) {
      GrayF32 b = to.pixels();
      double[] m = between.matrix();
      for (int x = 0; x < image.width; x++) {
        double w = m[6] * (x + 0.5) + m[7] * (y + 0.5) + m[8];
        double u = (m[0] * (x + 0.5) + m[1] * (y + 0.5) + m[2]) / w - 0.5;
        double v = (m[3] * (x + 0.5) + m[4] * (y + 0.5) + m[5]) / w - 0.5;
        if (w > 0 && u >= 0 && v >= 0 && u < b.width - 1 && v < b.height - 1) {
          int column = (int) u;
          int i = ((int) v) * b.width + column;
          float along = (float) (u - column);
          float down = (float) (v - (int) v);
          float upper = b.data[i] + along * (b.data[i + 1] - b.data[i]);
          float lower =
              b.data[i + b.width] + along * (b.data[i + b.width + 1] - b.data[i + b.width]);
          image.data[y * image.width + x] = upper + down * (lower - upper);
        }
      }
    }

    Optional<PointPair> find(Patch patch, int reach) {
      if (!covered(patch, reach)) {
        return Optional.empty();
      }
      int side = 2 * reach + 1;
      double[] alike = correlations(patch, reach);
      int best = 0;
      for (int k = 0; k < alike.length; k++) {
        best = alike[k] > alike[best] ? k : best;
      }
      int column = best % side;
      int row = best / side;
      boolean inside = column > 0 && row > 0 && column < side - 1 && row < side - 1;
      if (!inside || alike[best] < ALIKE || !clear(alike, best, side)) {
        return Optional.empty();
      }
      double x = column - reach + peak(alike[best - 1], alike[best], alike[best + 1]);
      double y = row - reach + peak(alike[best - side], alike[best], alike[best + side]);
      Point place = from.toFull().apply(new Point(patch.x + 0.5, patch.y + 0.5));
      Point found = from.toFull().apply(new Point(patch.x + x + 0.5, patch.y + y + 0.5));
      return Optional.of(new PointPair(place, guess.apply(found)));
    }

    /**
     * How well the patch correlates at each shift, row by row. First every other shift, as on a
     * chessboard; the rest only beside those that are at all alike, and 0 elsewhere, since what
     * matches well still does one pixel further.
     */
    private double[] correlations(Patch patch, int reach) {
      int side = 2 * reach + 1;
      int left = patch.x - reach;
      int top = patch.y - reach;
      double[] alike = new double[side * side];
      for (int k = 0; k < alike.length; k += 2) {
        alike[k] = correlation(patch, left + k % side, top + k / side);
      }
      for (int k = 1; k < alike.length; k += 2) {
        boolean worthIt =
            alike[k - 1] > BESIDE
                || alike[k + 1] > BESIDE
                || k >= side && alike[k - side] > BESIDE
                || k + side < alike.length && alike[k + side] > BESIDE;
        if (worthIt) {
          alike[k] = correlation(patch, left + k % side, top + k / side);
        }
      }
      return alike;
    }

    /** Whether all that would be looked at lies on both pictures. */
    private boolean covered(Patch patch, int reach) {
      int edge = radius + reach + 1;
      Extent seen =
          new Extent(patch.x - edge, patch.y - edge, patch.x + edge + 1, patch.y + edge + 1);
      GrayF32 b = to.pixels();
      boolean within =
          seen.left() >= 0
              && seen.top() >= 0
              && seen.right() <= image.width
              && seen.bottom() <= image.height;
      for (Point corner : seen.corners()) {
        within &= between.denominator(corner) > 0;
        if (within) {
          Point there = between.apply(corner);
          within =
              there.x() > 1 && there.y() > 1 && there.x() < b.width - 1 && there.y() < b.height - 1;
        }
      }
      return within;
    }

    private double correlation(Patch patch, int x, int y) {
      int size = 2 * radius + 1;
      int stride = image.width + 1;
      int above = (y - radius) * stride + x - radius;
      int below = above + size * stride;
      double sum = sums[below + size] - sums[below] - sums[above + size] + sums[above];
      double square =
          squares[below + size] - squares[below] - squares[above + size] + squares[above];
      double energy = square - sum * sum / (size * size);
      if (energy < FLAT * size * size) {
        return 0;
      }
      // four sums at a time, since the processor would else wait for each to be added
      float first = 0;
      float second = 0;
      float third = 0;
      float fourth = 0;
      float[] differences = patch.differences;
      float[] pixels = image.data;
      int k = 0;
      for (int v = 0; v < size; v++) {
        int i = (y - radius + v) * image.width + x - radius;
        int end = k + size;
        for (; k + 3 < end; k += 4, i += 4) {
          first += differences[k] * pixels[i];
          second += differences[k + 1] * pixels[i + 1];
          third += differences[k + 2] * pixels[i + 2];
          fourth += differences[k + 3] * pixels[i + 3];
        }
        for (; k < end; k++, i++) {
          first += differences[k] * pixels[i];
        }
      }
      float product = first + second + third + fourth;
      return product / Math.sqrt(energy * patch.energy);
    }

    /** Whether no place away from the best one correlates about as well. */
    private boolean clear(double[] alike, int best, int side) {
      for (int k = 0; k < alike.length; k++) {
        double apart = Math.hypot(k % side - best % side, k / side - best / side);
        if (apart > 0.7 * radius && alike[k] > alike[best] - CLEAR) {
          return false;
        }
      }
      return true;
    }
  }

  /** Where the parabola through three neighbours peaks, from the middle one. */
  private static double peak(double before, double at, double after) {
    double bend = before - 2 * at + after;
    return bend < 0 ? (before - after) / (2 * bend) : 0;
  }
}
