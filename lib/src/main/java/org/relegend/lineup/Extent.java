package org.relegend.lineup;

import java.util.List;
import org.relegend.map.Point;

/** The rectangle that a picture, or a set of points, takes up, in the picture's units. */
public record Extent(double left, double top, double right, double bottom) {
  public Extent {
    if (!(right >= left && bottom >= top)
        || !Double.isFinite(right - left)
        || !Double.isFinite(bottom - top)) {
      throw new IllegalArgumentException(
          "not a rectangle: " + left + ", " + top + " to " + right + ", " + bottom);
    }
  }

  /** The whole of a picture with its origin in the upper left corner. */
  public static Extent of(double width, double height) {
    return new Extent(0, 0, width, height);
  }

  /**
   * The smallest rectangle round some points.
   *
   * @throws IllegalArgumentException for no points
   */
  public static Extent around(List<Point> points) {
    if (points.isEmpty()) {
      throw new IllegalArgumentException("no points to draw a rectangle round");
    }
    double left = Double.POSITIVE_INFINITY;
    double top = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double bottom = Double.NEGATIVE_INFINITY;
    for (Point p : points) {
      left = Math.min(left, p.x());
      top = Math.min(top, p.y());
      right = Math.max(right, p.x());
      bottom = Math.max(bottom, p.y());
    }
    return new Extent(left, top, right, bottom);
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return bottom - top;
  }

  public double area() {
    return width() * height();
  }

  public double diagonal() {
    return Math.hypot(width(), height());
  }

  public Point centre() {
    return new Point((left + right) / 2, (top + bottom) / 2);
  }

  /** Upper left, upper right, lower right, lower left. */
  public List<Point> corners() {
    return List.of(
        new Point(left, top),
        new Point(right, top),
        new Point(right, bottom),
        new Point(left, bottom));
  }

  /** Whether the point lies in it or on its edge. */
  public boolean contains(Point p) {
    return p.x() >= left && p.x() <= right && p.y() >= top && p.y() <= bottom;
  }
}
