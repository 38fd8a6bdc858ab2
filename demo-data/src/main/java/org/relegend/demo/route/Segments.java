package org.relegend.demo.route;

import org.relegend.demo.design.Spot;

/** Distances between points and straight stretches of copper. */
public final class Segments {
  private Segments() {}

  /** From a point to the nearest point of a segment. */
  public static double distance(Spot point, Spot a, Spot b) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double square = dx * dx + dy * dy;
    double along = square == 0 ? 0 : ((point.x() - a.x()) * dx + (point.y() - a.y()) * dy) / square;
    double part = Math.max(0, Math.min(1, along));
    return point.distance(new Spot(a.x() + part * dx, a.y() + part * dy));
  }

  /** Between two segments; 0 where they cross. */
  public static double distance(Spot a, Spot b, Spot c, Spot d) {
    if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) {
      return 0;
    }
    return Math.min(
        Math.min(distance(a, c, d), distance(b, c, d)),
        Math.min(distance(c, a, b), distance(d, a, b)));
  }

  private static double side(Spot a, Spot b, Spot point) {
    return Math.signum(
        (b.x() - a.x()) * (point.y() - a.y()) - (b.y() - a.y()) * (point.x() - a.x()));
  }
}
