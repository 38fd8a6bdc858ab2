package org.relegend.map;

/**
 * A point of a picture: pixels of the upright photo, or typographic points (1/72 inch) of a page as
 * displayed; origin at the upper left corner, y downwards. Whole numbers are pixel corners, so the
 * middle of the first pixel is (0.5, 0.5).
 */
public record Point(double x, double y) {
  public Point {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a point needs two finite numbers, not " + x + ", " + y);
    }
    x += 0.0; // a negative zero becomes zero, so that equal places are equal
    y += 0.0;
  }

  /** Distance to another point of the same picture, in the picture's units. */
  public double distance(Point other) {
    return Math.hypot(x - other.x, y - other.y);
  }

  public Point plus(double dx, double dy) {
    return new Point(x + dx, y + dy);
  }
}
