package org.relegend.lineup;

import boofcv.struct.image.GrayF32;
import java.util.Arrays;
import java.util.Optional;
import org.relegend.map.Point;

/**
 * Where a scan of a drawing is dark: its lines and letters, told from the paper by what lies around
 * them, so that a grey or unevenly lit scan does as well as a clean one.
 */
final class InkMap {
  /** Share of the longer edge that a pixel is compared with. */
  private static final int AROUND = 40;

  /** What the darkest hundredth is darker than its surroundings by; half of that is a line. */
  private static final double DARKEST = 0.99;

  private static final double HALF = 0.45;

  /** Grey levels below which nothing is a line, as noise and the paper's grain do that much. */
  private static final double FAINTEST = 10;

  /** How many times the spread across a line the spread along it is. */
  private static final double LONG = 4;

  final int width;
  final int height;
  private final boolean[] dark;
  private final float[] darker;

  private InkMap(int width, int height, boolean[] dark, float[] darker) {
    this.width = width;
    this.height = height;
    this.dark = dark;
    this.darker = darker;
  }

  static InkMap of(GrayF32 grey) {
    int size = grey.width * grey.height;
    float[] value = Arrays.copyOf(grey.data, size);
    float[] around =
        BoxMean.mean(
            value,
            grey.width,
            grey.height,
            Math.max(7, Math.max(grey.width, grey.height) / AROUND / 2));
    float[] darker = new float[size];
    for (int i = 0; i < size; i++) {
      darker[i] = Math.max(0, around[i] - value[i]);
    }
    float[] sorted = darker.clone();
    Arrays.sort(sorted);
    double limit = Math.max(FAINTEST, HALF * sorted[(int) (DARKEST * (size - 1))]);
    boolean[] dark = new boolean[size];
    for (int i = 0; i < size; i++) {
      dark[i] = darker[i] > limit;
    }
    return new InkMap(grey.width, grey.height, dark, darker);
  }

  /** The same in cells of so many pixels; a cell is dark where a line crosses it. */
  InkMap inCells(int cell) {
    int across = (width + cell - 1) / cell;
    int down = (height + cell - 1) / cell;
    int[] count = new int[across * down];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        if (dark[y * width + x]) {
          count[y / cell * across + x / cell]++;
        }
      }
    }
    boolean[] cells = new boolean[across * down];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = count[i] * 6 > cell * cell;
    }
    return new InkMap(across, down, cells, new float[0]);
  }

  boolean at(int x, int y) {
    return dark[y * width + x];
  }

  /** Share of all pixels. */
  double share() {
    int count = 0;
    for (boolean one : dark) {
      count += one ? 1 : 0;
    }
    return count / (double) dark.length;
  }

  /** 1 on ink, 0 far from it, falling over twice so many pixels. */
  float[] blurred(int radius) {
    float[] soft = new float[dark.length];
    for (int i = 0; i < soft.length; i++) {
      soft[i] = dark[i] ? 1 : 0;
    }
    soft = BoxMean.mean(BoxMean.mean(soft, width, height, radius), width, height, radius);
    float line = 1f / (2 * radius + 1); // what a thin line comes to in its middle
    for (int i = 0; i < soft.length; i++) {
      soft[i] = Math.min(1, soft[i] / line);
    }
    return soft;
  }

  /** 1 within so many pixels of ink, in each direction, else 0. */
  float[] near(int radius) {
    float[] soft = new float[dark.length];
    for (int i = 0; i < soft.length; i++) {
      soft[i] = dark[i] ? 1 : 0;
    }
    soft = BoxMean.mean(soft, width, height, radius);
    for (int i = 0; i < soft.length; i++) {
      soft[i] = soft[i] > 1e-6f ? 1 : 0;
    }
    return soft;
  }

  /**
   * The foot of a point on the middle of a line.
   *
   * @param acrossX with {@code acrossY}: the direction across the line, of length 1
   */
  record Foot(Point at, double acrossX, double acrossY) {}

  /**
   * The foot of a point on the line that passes it: the ink around it is long in one direction, and
   * only across that does it tell where the line is.
   *
   * @param radius how far is looked
   * @return none where there is no line, or more than one
   */
  Optional<Foot> foot(Point from, int radius) {
    int left = Math.max(0, (int) from.x() - radius);
    int top = Math.max(0, (int) from.y() - radius);
    double[] m = new double[6]; // sums of w, wx, wy, wxx, wxy, wyy
    for (int y = top; y <= Math.min(height - 1, (int) from.y() + radius); y++) {
      for (int x = left; x <= Math.min(width - 1, (int) from.x() + radius); x++) {
        if (dark[y * width + x]) {
          double w = darker[y * width + x];
          double dx = x + 0.5 - from.x();
          double dy = y + 0.5 - from.y();
          m[0] += w;
          m[1] += w * dx;
          m[2] += w * dy;
          m[3] += w * dx * dx;
          m[4] += w * dx * dy;
          m[5] += w * dy * dy;
        }
      }
    }
    if (m[0] == 0) {
      return Optional.empty();
    }
    double x = m[1] / m[0];
    double y = m[2] / m[0];
    SymmetricMatrix spread =
        new SymmetricMatrix(m[3] / m[0] - x * x, m[4] / m[0] - x * y, m[5] / m[0] - y * y);
    return foot(from, x, y, spread);
  }

  private static Optional<Foot> foot(Point from, double x, double y, SymmetricMatrix spread) {
    double along = spread.largestEigenvalue();
    if (along < LONG * spread.smallestEigenvalue()) {
      return Optional.empty();
    }
    // the direction across: the eigenvector of the smaller spread
    double angle = Math.atan2(2 * spread.xy(), spread.xx() - spread.yy()) / 2 + Math.PI / 2;
    double acrossX = Math.cos(angle);
    double acrossY = Math.sin(angle);
    double off = x * acrossX + y * acrossY;
    return Optional.of(new Foot(from.plus(off * acrossX, off * acrossY), acrossX, acrossY));
  }
}
