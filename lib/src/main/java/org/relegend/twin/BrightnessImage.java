package org.relegend.twin;

/** How bright each pixel of an upright photo is: one byte each, row by row. */
public final class BrightnessImage {
  private final int width;
  private final int height;
  private final byte[] pixels;

  /**
   * Keeps the bytes, which must not change afterwards.
   *
   * @throws IllegalArgumentException unless there is one byte for each pixel
   */
  public BrightnessImage(int width, int height, byte[] pixels) {
    if (width < 1 || height < 1 || (long) width * height != pixels.length) {
      throw new IllegalArgumentException(
          "a picture of %d x %d pixels has not %d bytes".formatted(width, height, pixels.length));
    }
    this.width = width;
    this.height = height;
    this.pixels = pixels;
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  boolean has(double x, double y) {
    return x >= 0 && y >= 0 && x <= width - 1 && y <= height - 1;
  }

  /** 0 to 255, between pixel centres on a straight line; the nearest edge beyond the picture. */
  double at(double x, double y) {
    double left = Math.max(0, Math.min(width - 1.001, x));
    double top = Math.max(0, Math.min(height - 1.001, y));
    int column = (int) left;
    int row = (int) top;
    double right = left - column;
    double down = top - row;
    int at = row * width + column;
    int next = column + 1 < width ? 1 : 0;
    int below = row + 1 < height ? width : 0;
    double upper = value(at) * (1 - right) + value(at + next) * right;
    double lower = value(at + below) * (1 - right) + value(at + below + next) * right;
    return upper * (1 - down) + lower * down;
  }

  private int value(int index) {
    return pixels[index] & 255;
  }
}
