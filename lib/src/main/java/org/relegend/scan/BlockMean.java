package org.relegend.scan;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/** Makes images smaller by taking the mean of square blocks of pixels. */
final class BlockMean {
  private BlockMean() {}

  /**
   * Reduces a strip into rows of a smaller image; both of {@link BufferedImage#TYPE_INT_RGB}.
   *
   * @param times how many pixels of the strip make one
   * @param top row of the smaller image where the strip goes
   */
  static void reduce(BufferedImage strip, int times, BufferedImage smaller, int top) {
    int[] from = pixels(strip);
    int[] to = pixels(smaller);
    int width = smaller.getWidth();
    int rows = strip.getHeight() / times;
    for (int y = 0; y < rows; y++) {
      for (int x = 0; x < width; x++) {
        to[(top + y) * width + x] = mean(from, strip.getWidth(), x * times, y * times, times);
      }
    }
  }

  private static int mean(int[] pixels, int width, int left, int top, int times) {
    int red = 0;
    int green = 0;
    int blue = 0;
    for (int y = top; y < top + times; y++) {
      for (int i = y * width + left; i < y * width + left + times; i++) {
        red += pixels[i] >> 16 & 0xFF;
        green += pixels[i] >> 8 & 0xFF;
        blue += pixels[i] & 0xFF;
      }
    }
    int count = times * times;
    int half = count / 2;
    return (red + half) / count << 16 | (green + half) / count << 8 | (blue + half) / count;
  }

  private static int[] pixels(BufferedImage image) {
    return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
  }
}
