package org.relegend.demo.photo;

import java.util.stream.IntStream;
import org.relegend.demo.draw.Mask;

/** Softens pictures: three box averages come near a bell curve. */
final class Blur {
  private static final int STRIP = 128;

  private Blur() {}

  /** A mask as shares 0..1, softened with about the given spread in pixels. */
  static float[] of(Mask mask, double spread) {
    float[] values = new float[mask.width() * mask.height()];
    for (int y = 0; y < mask.height(); y++) {
      for (int x = 0; x < mask.width(); x++) {
        values[y * mask.width() + x] = mask.pixel(x, y) / 255f;
      }
    }
    int radius = Math.max(1, (int) Math.rint(spread * 0.9));
    for (int pass = 0; pass < 3; pass++) {
      values = columns(rows(values, mask.width(), radius), mask.width(), radius);
    }
    return values;
  }

  private static float[] rows(float[] from, int width, int radius) {
    float[] to = new float[from.length];
    IntStream.range(0, from.length / width)
        .parallel()
        .forEach(
            row -> {
              int start = row * width;
              double sum = 0;
              for (int k = -radius; k <= radius; k++) {
                sum += from[start + clip(k, width)];
              }
              for (int k = 0; k < width; k++) {
                to[start + k] = (float) (sum / (2 * radius + 1));
                sum += from[start + clip(k + radius + 1, width)];
                sum -= from[start + clip(k - radius, width)];
              }
            });
    return to;
  }

  /** Works on strips of neighbouring columns, row after row, as they lie in memory. */
  private static float[] columns(float[] from, int width, int radius) {
    float[] to = new float[from.length];
    int height = from.length / width;
    IntStream.range(0, (width + STRIP - 1) / STRIP)
        .parallel()
        .forEach(
            strip -> {
              int left = strip * STRIP;
              int count = Math.min(STRIP, width - left);
              double[] sums = new double[count];
              for (int k = -radius; k <= radius; k++) {
                add(sums, from, clip(k, height) * width + left, 1);
              }
              for (int row = 0; row < height; row++) {
                for (int k = 0; k < count; k++) {
                  to[row * width + left + k] = (float) (sums[k] / (2 * radius + 1));
                }
                add(sums, from, clip(row + radius + 1, height) * width + left, 1);
                add(sums, from, clip(row - radius, height) * width + left, -1);
              }
            });
    return to;
  }

  private static void add(double[] sums, float[] from, int start, int sign) {
    for (int k = 0; k < sums.length; k++) {
      sums[k] += sign * from[start + k];
    }
  }

  private static int clip(int at, int count) {
    return Math.max(0, Math.min(count - 1, at));
  }
}
