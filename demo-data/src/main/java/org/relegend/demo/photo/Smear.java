package org.relegend.demo.photo;

import java.util.stream.IntStream;

/** Blurs a plane of the picture as a lens or an unsteady hand does. */
final class Smear {
  private Smear() {}

  /** A bell of the given spread in pixels, rows then columns. */
  static float[] soft(float[] plane, int width, double spread) {
    if (spread < 0.15) {
      return plane;
    }
    double[] bell = bell(spread);
    float[] across = new float[plane.length];
    int height = plane.length / width;
    IntStream.range(0, height)
        .parallel()
        .forEach(
            row -> {
              for (int column = 0; column < width; column++) {
                double sum = 0;
                for (int k = 0; k < bell.length; k++) {
                  int from = column + k - bell.length / 2;
                  sum += bell[k] * plane[row * width + Math.max(0, Math.min(width - 1, from))];
                }
                across[row * width + column] = (float) sum;
              }
            });
    float[] both = new float[plane.length];
    IntStream.range(0, height)
        .parallel()
        .forEach(
            row -> {
              for (int column = 0; column < width; column++) {
                double sum = 0;
                for (int k = 0; k < bell.length; k++) {
                  int from = row + k - bell.length / 2;
                  sum += bell[k] * across[Math.max(0, Math.min(height - 1, from)) * width + column];
                }
                both[row * width + column] = (float) sum;
              }
            });
    return both;
  }

  /** An even streak of the given length in pixels, from upper left to lower right. */
  static float[] diagonal(float[] plane, int width, double length) {
    int steps = Math.max(1, (int) Math.rint(length * 0.7071));
    int height = plane.length / width;
    float[] smeared = new float[plane.length];
    IntStream.range(0, height)
        .parallel()
        .forEach(
            row -> {
              for (int column = 0; column < width; column++) {
                double sum = 0;
                for (int k = 0; k <= steps; k++) {
                  int x = Math.max(0, Math.min(width - 1, column + k - steps / 2));
                  int y = Math.max(0, Math.min(height - 1, row + k - steps / 2));
                  sum += plane[y * width + x];
                }
                smeared[row * width + column] = (float) (sum / (steps + 1));
              }
            });
    return smeared;
  }

  private static double[] bell(double spread) {
    int reach = (int) Math.ceil(2.5 * spread);
    double[] bell = new double[2 * reach + 1];
    double sum = 0;
    for (int k = -reach; k <= reach; k++) {
      bell[k + reach] = StrictMath.exp(-0.5 * k * k / (spread * spread));
      sum += bell[k + reach];
    }
    for (int k = 0; k < bell.length; k++) {
      bell[k] /= sum;
    }
    return bell;
  }
}
