package org.relegend.lineup;

/**
 * How much more ink there is at a place than usual around it, so that points on lines can be told
 * from points that happen to fall on dark regions.
 */
final class InkContrast {
  final int width;
  final int height;
  private final float[] values;
  private final float[] mean;

  /**
   * @param values 0 to 1, row by row
   * @param around radius of what is usual, in pixels
   */
  InkContrast(float[] values, int width, int height, int around) {
    this.width = width;
    this.height = height;
    this.values = values;
    mean = BoxMean.mean(values, width, height, around);
  }

  /**
   * What points come to.
   *
   * @param inside how many the picture shows
   * @param sum of what they have there
   * @param usual of what is usual around them
   */
  record Tally(int inside, double sum, double usual) {
    private static final double HARDLY = 1e-3;

    double more() {
      return sum - usual;
    }

    /**
     * How surprising it is that random points come to so much: the negative logarithm (to base e)
     * of its likelihood, by Chernoff's bound for the binomial distribution; 0 where they come to
     * less than usual.
     */
    double sure() {
      if (inside == 0) {
        return 0;
      }
      double share = Math.min(1 - HARDLY, sum / inside);
      double chance = Math.max(HARDLY, Math.min(1 - HARDLY, usual / inside));
      return share <= chance
          ? 0
          : inside
              * (share * Math.log(share / chance)
                  + (1 - share) * Math.log((1 - share) / (1 - chance)));
    }
  }

  /** Of points carried here by x' = a0 x + a1 y + a2, y' = a3 x + a4 y + a5. */
  Tally of(double[] points, double[] a) {
    int inside = 0;
    double sum = 0;
    double usual = 0;
    for (int i = 0; i < points.length; i += 2) {
      double x = a[0] * points[i] + a[1] * points[i + 1] + a[2];
      double y = a[3] * points[i] + a[4] * points[i + 1] + a[5];
      if (x >= 0 && y >= 0 && x < width && y < height) {
        int at = width * (int) y + (int) x;
        inside++;
        sum += values[at];
        usual += mean[at];
      }
    }
    return new Tally(inside, sum, usual);
  }
}
