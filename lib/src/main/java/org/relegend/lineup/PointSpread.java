package org.relegend.lineup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.relegend.map.Point;

/** How points are spread over a picture. */
final class PointSpread {
  /** Beyond so many points, leaving one out changes nothing about the rest lying on a line. */
  private static final int MANY = 60;

  private PointSpread() {}

  /**
   * Standard deviation across the line that fits the points best, over that along it: 0 on a line,
   * 1 for a round cloud.
   */
  static double thickness(List<Point> points) {
    Point centre = NormalisedPairs.centroid(points);
    SymmetricMatrix sum = SymmetricMatrix.ZERO;
    for (Point p : points) {
      double x = p.x() - centre.x();
      double y = p.y() - centre.y();
      sum = sum.plus(new SymmetricMatrix(x * x, x * y, y * y));
    }
    double longest = sum.largestEigenvalue();
    return longest > 0 ? Math.sqrt(sum.smallestEigenvalue() / longest) : 0;
  }

  /** The least thickness that leaving out any one point gives: what a perspective hangs on. */
  static double thicknessWithoutOne(List<Point> points) {
    double least = thickness(points);
    for (int i = 0; i < points.size() && points.size() <= MANY; i++) {
      List<Point> rest = new ArrayList<>(points);
      rest.remove(i);
      least = Math.min(least, thickness(rest));
    }
    return least;
  }

  /** The convex hull, by the monotone chain (Andrew 1979). */
  static List<Point> hull(List<Point> points) {
    List<Point> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y));
    List<Point> hull = new ArrayList<>();
    for (int pass = 0; pass < 2; pass++) {
      int start = hull.size();
      for (Point p : sorted) {
        while (hull.size() >= start + 2
            && turn(hull.get(hull.size() - 2), hull.get(hull.size() - 1), p) <= 0) {
          hull.remove(hull.size() - 1);
        }
        hull.add(p);
      }
      hull.remove(hull.size() - 1);
      Collections.reverse(sorted);
    }
    return hull;
  }

  static double area(List<Point> polygon) {
    double twice = 0;
    for (int i = 0; i < polygon.size(); i++) {
      Point a = polygon.get(i);
      Point b = polygon.get((i + 1) % polygon.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return Math.abs(twice) / 2;
  }

  private static double turn(Point a, Point b, Point c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
  }
}
