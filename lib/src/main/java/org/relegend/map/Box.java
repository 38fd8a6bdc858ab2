package org.relegend.map;

import java.util.Collection;

/** An upright rectangle of a picture, in the units of {@link Point}; it may be empty. */
public record Box(double left, double top, double right, double bottom) {
  public Box {
    if (!(left <= right && top <= bottom)
        || Double.isInfinite(right - left)
        || Double.isInfinite(bottom - top)) {
      throw new IllegalArgumentException(
          "no box from %s, %s to %s, %s".formatted(left, top, right, bottom));
    }
  }

  /**
   * The smallest box around some points.
   *
   * @throws IllegalArgumentException where there is no point
   */
  public static Box around(Collection<Point> points) {
    if (points.isEmpty()) {
      throw new IllegalArgumentException("no box around no points");
    }
    return new Box(
        points.stream().mapToDouble(Point::x).min().orElseThrow(),
        points.stream().mapToDouble(Point::y).min().orElseThrow(),
        points.stream().mapToDouble(Point::x).max().orElseThrow(),
        points.stream().mapToDouble(Point::y).max().orElseThrow());
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return bottom - top;
  }

  public Point centre() {
    return new Point((left + right) / 2, (top + bottom) / 2);
  }

  /** Edges included. */
  public boolean contains(Point point) {
    return point.x() >= left && point.x() <= right && point.y() >= top && point.y() <= bottom;
  }

  /** Whether both have a point in common, edges included. */
  public boolean touches(Box other) {
    return left <= other.right && other.left <= right && top <= other.bottom && other.top <= bottom;
  }

  /** Larger by a margin on all four sides. */
  public Box grown(double margin) {
    return new Box(left - margin, top - margin, right + margin, bottom + margin);
  }
}
