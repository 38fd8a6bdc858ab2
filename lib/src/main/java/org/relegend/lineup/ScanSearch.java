package org.relegend.lineup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds how a drawing whose pins are known could lie in a scan, roughly: turned by quarters and by
 * the scan's own skew, in any size and place. Lines of drawings run across and down, so the skew is
 * that at which rows and columns of the scan differ most (projection profiles), and each direction
 * is then searched by itself: rows of pins lie on rows with much ink.
 */
final class ScanSearch {
  private static final double MOST_SKEW = Math.toRadians(12);
  private static final double SKEW_STEP = Math.toRadians(0.1);
  private static final int SKEW_SAMPLES = 30_000;

  /** Skew of the page that the pins were placed on, which is nearly none. */
  private static final int TILTS = 4;

  private static final double TILT_STEP = Math.toRadians(0.5);

  /** Sizes tried, as shares of that at which page and scan are equally large. */
  private static final double SMALLEST = 0.5;

  private static final double LARGEST = 2;
  private static final double SIZE_STEP = 1.01;

  /** Pins that are looked at, and best rows and columns that are tried together. */
  private static final int PINS = 120;

  private static final int BEST = 12;
  private static final int KEPT = 48;

  /** What lies around, in cells. */
  private static final int AROUND = 20;

  /** A way the drawing may lie: the numbers that carry page points to cells, and how sure. */
  static final class Lie {
    final double[] affine;
    final double sure;

    Lie(double[] affine, double sure) {
      this.affine = affine;
      this.sure = sure;
    }
  }

  private final InkMap ink;
  private final InkContrast heat;
  private final double skew;
  private final double[] rows;
  private final double[] columns;

  ScanSearch(InkMap working, InkMap cells) {
    this.ink = cells;
    heat = new InkContrast(cells.blurred(1), cells.width, cells.height, AROUND);
    skew = skew(working);
    int reach = (int) Math.ceil(Math.hypot(cells.width, cells.height));
    rows = profile(-Math.sin(skew), Math.cos(skew), reach);
    columns = profile(Math.cos(skew), Math.sin(skew), reach);
  }

  InkContrast heat() {
    return heat;
  }

  /** The angle at which projections of the ink differ most from row to row. */
  private static double skew(InkMap ink) {
    List<int[]> points = new ArrayList<>();
    int step = Math.max(1, (int) (ink.share() * ink.width * ink.height / SKEW_SAMPLES));
    int count = 0;
    for (int y = 0; y < ink.height; y++) {
      for (int x = 0; x < ink.width; x++) {
        if (ink.at(x, y) && count++ % step == 0) {
          points.add(new int[] {x, y});
        }
      }
    }
    int steps = (int) Math.round(MOST_SKEW / SKEW_STEP);
    int reach = (int) Math.ceil(Math.hypot(ink.width, ink.height));
    return IntStream.rangeClosed(-steps, steps)
        .parallel()
        .mapToObj(i -> new double[] {i * SKEW_STEP, contrast(points, i * SKEW_STEP, reach)})
        .max(Comparator.comparingDouble(tried -> tried[1]))
        .map(tried -> tried[0])
        .orElse(0.0);
  }

  private static double contrast(List<int[]> points, double angle, int reach) {
    int[] across = new int[2 * reach + 1];
    int[] down = new int[2 * reach + 1];
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    for (int[] p : points) {
      across[reach + (int) Math.rint(cos * p[0] + sin * p[1])]++;
      down[reach + (int) Math.rint(-sin * p[0] + cos * p[1])]++;
    }
    double sum = 0;
    for (int i = 0; i < across.length; i++) {
      sum += (double) across[i] * across[i] + (double) down[i] * down[i];
    }
    return sum;
  }

  /** Ink along a direction, seen from the middle, less what is usual around. */
  private double[] profile(double alongX, double alongY, int reach) {
    float[] count = new float[reach + 1];
    for (int y = 0; y < ink.height; y++) {
      for (int x = 0; x < ink.width; x++) {
        if (ink.at(x, y)) {
          double at = alongX * (x + 0.5 - ink.width / 2.0) + alongY * (y + 0.5 - ink.height / 2.0);
          count[(int) Math.rint(at) + reach / 2]++;
        }
      }
    }
    float[] mean = BoxMean.mean(count, count.length, 1, AROUND / 2);
    double[] result = new double[count.length];
    for (int i = 0; i < result.length; i++) {
      result[i] = Math.sqrt(count[i]) - Math.sqrt(mean[i]);
    }
    return result;
  }

  /**
   * The likeliest ways in which the drawing lies, the likeliest first.
   *
   * @param pins x and y in turn, of the page
   * @param page its size
   */
  List<Lie> lies(double[] pins, Extent page) {
    double[] some = some(pins);
    double equal = Math.hypot(ink.width, ink.height) / page.diagonal();
    int sizes = (int) (Math.log(LARGEST / SMALLEST) / Math.log(SIZE_STEP));
    int turns = 4 * (2 * TILTS + 1);
    return IntStream.range(0, turns * sizes)
        .parallel()
        .mapToObj(
            i -> {
              int tilted = i % turns / 4 - TILTS;
              double tilt = tilted * TILT_STEP;
              int quarters = i % 4;
              double turn = quarters * Math.PI / 2 - tilt;
              int step = i / turns;
              double size = equal * SMALLEST * Math.pow(SIZE_STEP, step);
              return best(some, page, turn, size);
            })
        .sorted(Comparator.comparingDouble(lie -> -lie.sure))
        .limit(KEPT)
        .toList();
  }

  private static double[] some(double[] pins) {
    int count = Math.min(PINS, pins.length / 2);
    double[] some = new double[2 * count];
    for (int i = 0; i < count; i++) {
      int from = (int) ((long) i * (pins.length / 2) / count);
      some[2 * i] = pins[2 * from];
      some[2 * i + 1] = pins[2 * from + 1];
    }
    return some;
  }

  /** The likeliest place for one turn and size. */
  private Lie best(double[] pins, Extent page, double turn, double size) {
    double cos = size * Math.cos(turn);
    double sin = size * Math.sin(turn);
    int count = pins.length / 2;
    int[] across = new int[count];
    int[] down = new int[count];
    for (int i = 0; i < count; i++) {
      double x = pins[2 * i] - page.width() / 2;
      double y = pins[2 * i + 1] - page.height() / 2;
      across[i] = (int) Math.rint(cos * x - sin * y);
      down[i] = (int) Math.rint(sin * x + cos * y);
    }
    int[] rights = shifts(columns, across, ink.width);
    int[] downs = shifts(rows, down, ink.height);
    Lie best = new Lie(new double[6], Double.NEGATIVE_INFINITY);
    for (int right : rights) {
      for (int low : downs) {
        double[] affine = affine(page, cos, sin, right, low);
        InkContrast.Tally tally = heat.of(pins, affine);
        if (tally.sure() > best.sure && tally.inside() * 3 > count) {
          best = new Lie(affine, tally.sure());
        }
      }
    }
    return best;
  }

  /** Turned and scaled about the page's middle, shifted along the skewed axes. */
  private double[] affine(Extent page, double cos, double sin, double right, double low) {
    double c = Math.cos(skew);
    double s = Math.sin(skew);
    double[] a = {
      c * cos - s * sin, -c * sin - s * cos, 0, s * cos + c * sin, c * cos - s * sin, 0
    };
    double x = page.width() / 2;
    double y = page.height() / 2;
    a[2] = ink.width / 2.0 + c * right - s * low - a[0] * x - a[1] * y;
    a[5] = ink.height / 2.0 + s * right + c * low - a[3] * x - a[4] * y;
    return a;
  }

  /** The shifts at which these points meet most ink, no two side by side. */
  private static int[] shifts(double[] profile, int[] points, int extent) {
    int middle = (profile.length - 1) / 2;
    int reach = (int) (0.6 * extent);
    double[] sums = new double[2 * reach + 1];
    for (int shift = -reach; shift <= reach; shift++) {
      double sum = 0;
      for (int point : points) {
        int at = middle + point + shift;
        if (at >= 0 && at < profile.length) {
          sum += profile[at];
        }
      }
      sums[shift + reach] = sum;
    }
    return IntStream.range(0, sums.length)
        .filter(i -> i == 0 || sums[i] >= sums[i - 1])
        .filter(i -> i == sums.length - 1 || sums[i] > sums[i + 1])
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -sums[i]))
        .limit(BEST)
        .mapToInt(i -> i - reach)
        .toArray();
  }
}
