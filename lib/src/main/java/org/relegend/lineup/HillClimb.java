package org.relegend.lineup;

/** Moves three corners of a page about, by smaller and smaller steps, while its pins get warmer. */
final class HillClimb {
  private static final double FINEST = 0.05;
  private static final int MOST = 200;

  private HillClimb() {}

  /**
   * @param affine x' = a0 x + a1 y + a2, y' = a3 x + a4 y + a5
   * @param step the first step, in pixels of the heat
   */
  static double[] of(InkContrast heat, double[] pins, Extent page, double[] affine, double step) {
    double[] corners = corners(affine, page);
    double best = heat.of(pins, affine).more();
    double now = step;
    for (int i = 0; i < MOST && now > FINEST; i++) {
      boolean moved = false;
      for (int c = 0; c < 2 * (corners.length + 2); c++) {
        double[] tried = corners.clone();
        double by = c % 2 == 0 ? now : -now;
        if (c / 2 < corners.length) {
          tried[c / 2] += by;
        } else { // all three together, across or down
          for (int k = c / 2 - corners.length; k < corners.length; k += 2) {
            tried[k] += by;
          }
        }
        double sum = heat.of(pins, affine(tried, page)).more();
        if (sum > best) {
          best = sum;
          corners = tried;
          moved = true;
        }
      }
      if (!moved) {
        now /= 2;
      }
    }
    return affine(corners, page);
  }

  /** Where upper left, upper right and lower left come to lie. */
  private static double[] corners(double[] a, Extent page) {
    double w = page.width();
    double h = page.height();
    return new double[] {
      a[2], a[5], a[0] * w + a[2], a[3] * w + a[5], a[1] * h + a[2], a[4] * h + a[5]
    };
  }

  private static double[] affine(double[] c, Extent page) {
    double w = page.width();
    double h = page.height();
    return new double[] {
      (c[2] - c[0]) / w, (c[4] - c[0]) / h, c[0], (c[3] - c[1]) / w, (c[5] - c[1]) / h, c[1]
    };
  }
}
