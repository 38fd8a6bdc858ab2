package org.relegend.scan;

import java.util.List;
import org.relegend.map.Point;

/**
 * How a camera held askew noted that its picture is to be turned: the orientation tag (274, 0112
 * hexadecimal) of Exif 2.32, section 4.6.4 A (also of TIFF 6.0).
 *
 * @param value 1 to 8
 */
public record ExifOrientation(int value) {
  /** As the pixels are stored. */
  public static final ExifOrientation UPRIGHT = new ExifOrientation(1);

  /** All eight, in order. */
  public static final List<ExifOrientation> ALL =
      List.of(1, 2, 3, 4, 5, 6, 7, 8).stream().map(ExifOrientation::new).toList();

  public ExifOrientation {
    if (value < 1 || value > 8) {
      throw new IllegalArgumentException("orientations go from 1 to 8, not " + value);
    }
  }

  /** Whether stored rows are seen as columns, so that width and height change places. */
  public boolean swaps() {
    return value >= 5;
  }

  /** Whether the first stored column is seen at the right (or, where swapped, at the bottom). */
  boolean columnsReversed() {
    return value == 2 || value == 3 || value == 7 || value == 8;
  }

  /** Whether the first stored row is seen at the bottom (or, where swapped, at the right). */
  boolean rowsReversed() {
    return value == 3 || value == 4 || value == 6 || value == 7;
  }

  public int seenWidth(int width, int height) {
    return swaps() ? height : width;
  }

  public int seenHeight(int width, int height) {
    return swaps() ? width : height;
  }

  /**
   * Where a point of the stored pixels is seen.
   *
   * @param width of the stored pixels
   * @param height of the stored pixels
   */
  public Point seen(Point stored, int width, int height) {
    double x = columnsReversed() ? width - stored.x() : stored.x();
    double y = rowsReversed() ? height - stored.y() : stored.y();
    return swaps() ? new Point(y, x) : new Point(x, y);
  }
}
