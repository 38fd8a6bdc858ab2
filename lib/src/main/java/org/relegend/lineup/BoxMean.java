package org.relegend.lineup;

/** Means over squares round each pixel, cut off at the edges. */
final class BoxMean {
  private BoxMean() {}

  /** Over squares of {@code 2 * radius + 1} pixels to a side. */
  static float[] mean(float[] values, int width, int height, int radius) {
    return down(across(values, width, height, radius), width, height, radius);
  }

  private static float[] across(float[] values, int width, int height, int radius) {
    float[] result = new float[values.length];
    double[] sums = new double[width + 1];
    for (int y = 0; y < height; y++) {
      int row = y * width;
      for (int x = 0; x < width; x++) {
        sums[x + 1] = sums[x] + values[row + x];
      }
      for (int x = 0; x < width; x++) {
        int from = Math.max(0, x - radius);
        int to = Math.min(width, x + radius + 1);
        result[row + x] = (float) ((sums[to] - sums[from]) / (to - from));
      }
    }
    return result;
  }

  private static float[] down(float[] values, int width, int height, int radius) {
    float[] result = new float[values.length];
    double[] sums = new double[width];
    int from = 0;
    int to = 0;
    for (int y = 0; y < height; y++) {
      for (; to < Math.min(height, y + radius + 1); to++) {
        add(values, to * width, 1, sums);
      }
      for (; from < y - radius; from++) {
        add(values, from * width, -1, sums);
      }
      for (int x = 0; x < width; x++) {
        result[y * width + x] = (float) (sums[x] / (to - from));
      }
    }
    return result;
  }

  private static void add(float[] values, int row, int sign, double[] sums) {
    for (int x = 0; x < sums.length; x++) {
      sums[x] += sign * values[row + x];
    }
  }
}
