package org.relegend.viewer.view;

/** A point of the component that shows a picture: its own pixels, from its upper left corner. */
public record ScreenPoint(double x, double y) {
  public ScreenPoint {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a point needs two finite numbers, not " + x + ", " + y);
    }
  }

  public double distance(ScreenPoint other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
