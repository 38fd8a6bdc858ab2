package org.relegend.viewer.session;

import java.util.List;
import org.relegend.map.Point;

/** What lies inside an outline. */
final class Polygon {
  private Polygon() {}

  /** Whether a point lies inside, by counting crossings (even-odd rule). */
  static boolean contains(List<Point> outline, Point point) {
    boolean inside = false;
    for (int i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
      Point a = outline.get(i);
      Point b = outline.get(j);
      boolean straddles = a.y() > point.y() != b.y() > point.y();
      if (straddles
          && point.x() < (b.x() - a.x()) * (point.y() - a.y()) / (b.y() - a.y()) + a.x()) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** Whether two outlines share any place: a corner of one in the other, or edges that cross. */
  static boolean overlap(List<Point> a, List<Point> b) {
    return a.stream().anyMatch(point -> contains(b, point))
        || b.stream().anyMatch(point -> contains(a, point))
        || edgesCross(a, b);
  }

  private static boolean edgesCross(List<Point> a, List<Point> b) {
    for (int i = 0; i < a.size(); i++) {
      for (int j = 0; j < b.size(); j++) {
        if (cross(a.get(i), a.get((i + 1) % a.size()), b.get(j), b.get((j + 1) % b.size()))) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean cross(Point a, Point b, Point c, Point d) {
    return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
  }

  private static double turn(Point a, Point b, Point c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
  }

  /** Area in square picture units. */
  static double area(List<Point> outline) {
    double twice = 0;
    for (int i = 0; i < outline.size(); i++) {
      Point a = outline.get(i);
      Point b = outline.get((i + 1) % outline.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return Math.abs(twice) / 2;
  }
}
