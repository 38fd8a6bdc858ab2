package org.relegend.lineup;

import boofcv.alg.filter.misc.AverageDownSampleOps;
import boofcv.struct.image.GrayF32;
import boofcv.struct.image.GrayU8;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.stream.IntStream;

/**
 * The brightness of an upright picture, one byte a pixel, row by row: what pictures are matched by.
 */
public final class GreyImage {
  private final GrayU8 pixels;

  private GreyImage(GrayU8 pixels) {
    this.pixels = pixels;
  }

  /**
   * From bytes, which are kept, not copied, and must not change afterwards.
   *
   * @throws IllegalArgumentException unless there is one byte for each of at least one pixel
   */
  public static GreyImage of(int width, int height, byte[] brightness) {
    if (width < 1 || height < 1 || (long) width * height != brightness.length) {
      throw new IllegalArgumentException(
          "a picture of %d x %d pixels has not %d bytes"
              .formatted(width, height, brightness.length));
    }
    GrayU8 pixels = new GrayU8();
    pixels.data = brightness;
    pixels.width = width;
    pixels.stride = width;
    pixels.height = height;
    return new GreyImage(pixels);
  }

  /** Weighs red, green and blue as ITU-R BT.601 does; transparency is ignored. */
  public static GreyImage of(BufferedImage image) {
    int width = image.getWidth();
    byte[] brightness = new byte[width * image.getHeight()];
    byte[] plain = plainBytes(image);
    IntStream.range(0, image.getHeight())
        .parallel()
        .forEach(
            y -> {
              if (plain.length > 0) {
                weigh(plain, brightness, y * width, width);
              } else {
                weigh(image.getRGB(0, y, width, 1, null, 0, width), brightness, y * width);
              }
            });
    return of(width, image.getHeight(), brightness);
  }

  /**
   * Blue, green, red of each pixel, as photos are decoded; empty where the picture has another
   * form.
   */
  private static byte[] plainBytes(BufferedImage image) {
    boolean whole =
        image.getType() == BufferedImage.TYPE_3BYTE_BGR
            && image.getRaster().getDataBuffer() instanceof DataBufferByte bytes
            && bytes.getData().length == 3 * image.getWidth() * image.getHeight();
    return whole ? ((DataBufferByte) image.getRaster().getDataBuffer()).getData() : new byte[0];
  }

  private static void weigh(byte[] plain, byte[] brightness, int from, int count) {
    for (int i = from; i < from + count; i++) {
      brightness[i] = weighed(plain[3 * i + 2] & 255, plain[3 * i + 1] & 255, plain[3 * i] & 255);
    }
  }

  private static void weigh(int[] row, byte[] brightness, int from) {
    for (int x = 0; x < row.length; x++) {
      brightness[from + x] = weighed(row[x] >> 16 & 255, row[x] >> 8 & 255, row[x] & 255);
    }
  }

  private static byte weighed(int red, int green, int blue) {
    return (byte) ((299 * red + 587 * green + 114 * blue) / 1000);
  }

  public int width() {
    return pixels.width;
  }

  public int height() {
    return pixels.height;
  }

  public Extent extent() {
    return Extent.of(pixels.width, pixels.height);
  }

  /** Scaled down to so many pixels at most, each the mean of what it covers; never scaled up. */
  Scaled scaled(int mostPixels) {
    double factor = Math.sqrt(mostPixels / ((double) pixels.width * pixels.height));
    if (factor >= 1) {
      return inBlocks(1);
    }
    int width = Math.max(1, (int) Math.rint(factor * pixels.width));
    int height = Math.max(1, (int) Math.rint(factor * pixels.height));
    return (factor < 0.5 ? inBlocks((int) (1 / factor)) : inBlocks(1)).resized(width, height);
  }

  /**
   * Means of square blocks: quick, and little is left for the exact scaling. What is over at the
   * right and below is left out.
   */
  private Scaled inBlocks(int side) {
    GrayF32 means = new GrayF32(pixels.width / side, pixels.height / side);
    float share = 1f / (side * side);
    IntStream.range(0, means.height)
        .parallel()
        .forEach(
            y -> {
              for (int x = 0; x < means.width; x++) {
                int sum = 0;
                for (int v = 0; v < side; v++) {
                  int i = (y * side + v) * pixels.stride + x * side;
                  for (int u = 0; u < side; u++) {
                    sum += pixels.data[i + u] & 255;
                  }
                }
                means.data[y * means.width + x] = share * sum;
              }
            });
    return new Scaled(means, new Transform(side, 0, 0, 0, side, 0, 0, 0, 1));
  }

  /**
   * A scaled picture, and what carries its points to the full one. Points count whole numbers as
   * pixel corners, in both, so nothing but the scale lies between them.
   */
  record Scaled(GrayF32 pixels, Transform toFull) {

    Scaled halved() {
      return resized(Math.max(1, pixels.width / 2), Math.max(1, pixels.height / 2));
    }

    private Scaled resized(int width, int height) {
      GrayF32 smaller = new GrayF32(width, height);
      AverageDownSampleOps.down(pixels, smaller);
      double x = pixels.width / (double) width;
      double y = pixels.height / (double) height;
      return new Scaled(smaller, toFull.after(new Transform(x, 0, 0, 0, y, 0, 0, 0, 1)));
    }
  }
}
