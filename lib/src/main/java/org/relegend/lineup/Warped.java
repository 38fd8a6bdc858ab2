package org.relegend.lineup;

import java.awt.image.BufferedImage;
import java.util.stream.IntStream;
import org.relegend.map.Point;

/** One picture drawn as it would be seen in the frame of another that it is lined up with. */
public final class Warped {
  private Warped() {}

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
}
