package org.relegend.lineup;

import static java.util.Objects.requireNonNull;

import org.relegend.map.Point;

/** The same spot of a board on two pictures, each point in its own picture's units. */
public record PointPair(Point from, Point to) {
  public PointPair {
    requireNonNull(from);
    requireNonNull(to);
  }

  public static PointPair of(double x1, double y1, double x2, double y2) {
    return new PointPair(new Point(x1, y1), new Point(x2, y2));
  }

  public PointPair swapped() {
    return new PointPair(to, from);
  }
}
