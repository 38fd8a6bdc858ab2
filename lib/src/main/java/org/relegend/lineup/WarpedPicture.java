package org.relegend.lineup;

import java.awt.image.BufferedImage;
import java.util.stream.IntStream;
import org.relegend.map.Point;

/** One picture drawn as it would be seen in the frame of another that it is lined up with. */
public final class WarpedPicture {
  private WarpedPicture() {}

  /**
   * Each pixel of the result takes the nearest pixel of the picture; clear where there is none.
   *
   * @param picture at full size
   * @param width of the result, {@code height} likewise
   * @param toPicture from the result's pixels to the picture's
   */
  public static BufferedImage of(BufferedImage picture, int width, int height, LineUp toPicture) {
    BufferedImage warped = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    IntStream.range(0, height)
        .parallel()
        .forEach(y -> warped.setRGB(0, y, width, 1, row(picture, width, y, toPicture), 0, width));
    return warped;
  }

  private static int[] row(BufferedImage picture, int width, int y, LineUp toPicture) {
    int[] row = new int[width];
    for (int x = 0; x < width; x++) {
      // points count whole numbers as pixel corners
      Point there = toPicture.carry(new Point(x + 0.5, y + 0.5)).orElse(new Point(-1, -1));
      boolean seen =
          there.x() >= 0
              && there.y() >= 0
              && there.x() < picture.getWidth()
              && there.y() < picture.getHeight();
      row[x] = seen ? 0xFF000000 | picture.getRGB((int) there.x(), (int) there.y()) : 0;
    }
    return row;
  }

  /**
   * Each pixel of the result is taken from between the four nearest of the picture; mid-grey where
   * there is none. For results of about the picture's own scale.
   *
   * @param width of the result, {@code height} likewise
   * @param toPicture from the result's pixels to the picture's
   */
  public static BufferedImage smooth(
      BufferedImage picture, int width, int height, Transform toPicture) {
    BufferedImage warped = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    IntStream.range(0, height)
        .parallel()
        .forEach(
            y -> warped.setRGB(0, y, width, 1, smoothRow(picture, width, y, toPicture), 0, width));
    return warped;
  }

  private static int[] smoothRow(BufferedImage picture, int width, int y, Transform toPicture) {
    int[] row = new int[width];
    for (int x = 0; x < width; x++) {
      Point from = new Point(x + 0.5, y + 0.5);
      row[x] = 0x808080;
      if (toPicture.denominator(from) > 0) {
        Point there = toPicture.apply(from);
        double u = there.x() - 0.5;
        double v = there.y() - 0.5;
        if (u > -0.5 && v > -0.5 && u < picture.getWidth() - 0.5 && v < picture.getHeight() - 0.5) {
          row[x] = between(picture, u, v);
        }
      }
    }
    return row;
  }

  private static int between(BufferedImage picture, double u, double v) {
    int left = (int) Math.floor(u);
    int top = (int) Math.floor(v);
    int right = Math.min(left + 1, picture.getWidth() - 1);
    int bottom = Math.min(top + 1, picture.getHeight() - 1);
    double along = u - left;
    double down = v - top;
    left = Math.max(left, 0);
    top = Math.max(top, 0);
    int a = picture.getRGB(left, top);
    int b = picture.getRGB(right, top);
    int c = picture.getRGB(left, bottom);
    int d = picture.getRGB(right, bottom);
    int mixed = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      double upper = (a >> shift & 255) * (1 - along) + (b >> shift & 255) * along;
      double lower = (c >> shift & 255) * (1 - along) + (d >> shift & 255) * along;
      mixed |= (int) Math.rint(upper * (1 - down) + lower * down) << shift;
    }
    return mixed;
  }
}
