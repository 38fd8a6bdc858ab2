package org.relegend.hazard;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.relegend.map.Picture;
import org.relegend.map.Point;

/** Geometry of outlines on pictures, in the pictures' own units. */
public final class ZoneOutline {
  /** Corners that stand in for a circle when a hull is grown. */
  private static final int CORNERS = 8;

  private static final int GRID = 48;

  private ZoneOutline() {}

  /** Whether a point lies inside (even-odd rule) or on the outline itself. */
  public static boolean contains(List<Point> outline, Point point) {
    boolean inside = false;
    for (int i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
      Point a = outline.get(i);
      Point b = outline.get(j);
      if (isOn(a, b, point)) {
        return true;
      }
      boolean straddles = a.y() > point.y() != b.y() > point.y();
      if (straddles
          && point.x() < (b.x() - a.x()) * (point.y() - a.y()) / (b.y() - a.y()) + a.x()) {
        inside = !inside;
      }
    }
    return inside;
  }

  private static boolean isOn(Point a, Point b, Point point) {
    return turn(a, b, point) == 0
        && point.x() >= Math.min(a.x(), b.x())
        && point.x() <= Math.max(a.x(), b.x())
        && point.y() >= Math.min(a.y(), b.y())
        && point.y() <= Math.max(a.y(), b.y());
  }

  /** Whether two outlines share any place. */
  public static boolean overlap(List<Point> a, List<Point> b) {
    if (a.isEmpty() || b.isEmpty()) {
      return false;
    }
    return contains(b, a.get(0)) || contains(a, b.get(0)) || edgesCross(a, b);
  }

  private static boolean edgesCross(List<Point> a, List<Point> b) {
    for (int i = 0; i < a.size(); i++) {
      for (int j = 0; j < b.size(); j++) {
        if (touch(a.get(i), a.get((i + 1) % a.size()), b.get(j), b.get((j + 1) % b.size()))) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Whether one outline holds all of another, edges included. Of an outline that crosses itself it
   * is never said that it does. Corners count as held within a millionth of the outer one's size.
   */
  public static boolean covers(List<Point> outer, List<Point> inner) {
    if (outer.equals(inner)) {
      return true;
    }
    if (crossesItself(outer)) {
      return false;
    }
    double slack = 1e-6 * Math.sqrt(area(outer));
    for (int i = 0; i < inner.size(); i++) {
      Point from = inner.get(i);
      Point to = inner.get((i + 1) % inner.size());
      List<Double> cuts = cuts(from, to, outer);
      for (int k = 0; k < cuts.size(); k++) {
        double next = k + 1 < cuts.size() ? cuts.get(k + 1) : cuts.get(k);
        if (!holds(outer, along(from, to, cuts.get(k)), slack)
            || !holds(outer, along(from, to, (cuts.get(k) + next) / 2), slack)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Where an edge begins, meets the lines of an outline's edges, and ends; sorted, from 0 to 1. */
  private static List<Double> cuts(Point from, Point to, List<Point> outline) {
    List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
    for (int i = 0; i < outline.size(); i++) {
      Point a = outline.get(i);
      Point b = outline.get((i + 1) % outline.size());
      double before = turn(a, b, from);
      double after = turn(a, b, to);
      double at = before / (before - after);
      if (at > 0 && at < 1) {
        cuts.add(at);
      }
      double corner = project(from, to, a);
      if (corner > 0 && corner < 1) {
        cuts.add(corner);
      }
    }
    Collections.sort(cuts);
    return cuts;
  }

  private static boolean holds(List<Point> outline, Point point, double slack) {
    if (contains(outline, point)) {
      return true;
    }
    for (int i = 0; i < outline.size(); i++) {
      Point a = outline.get(i);
      Point b = outline.get((i + 1) % outline.size());
      double share = Math.max(0, Math.min(1, project(a, b, point)));
      if (along(a, b, share).distance(point) <= slack) {
        return true;
      }
    }
    return false;
  }

  /** Where the foot of a point lies on a line, as a share of the way; 0 where there is no line. */
  private static double project(Point a, Point b, Point point) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double square = dx * dx + dy * dy;
    return square == 0 ? 0 : ((point.x() - a.x()) * dx + (point.y() - a.y()) * dy) / square;
  }

  private static Point along(Point a, Point b, double share) {
    return new Point(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
  }

  /** Whether edges cross or touch that aren't neighbours, or nothing is enclosed. */
  public static boolean crossesItself(List<Point> outline) {
    int n = outline.size();
    for (int i = 0; i < n; i++) {
      for (int j = i + 2; j < n; j++) {
        boolean neighbours = i == 0 && j == n - 1;
        if (!neighbours
            && touch(
                outline.get(i), outline.get(i + 1), outline.get(j), outline.get((j + 1) % n))) {
          return true;
        }
      }
    }
    return area(outline) == 0;
  }

  private static boolean touch(Point a, Point b, Point c, Point d) {
    boolean cross = turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
    return cross || isOn(a, b, c) || isOn(a, b, d) || isOn(c, d, a) || isOn(c, d, b);
  }

  private static double turn(Point a, Point b, Point c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
  }

  /**
   * How much of an outline lies in none of these others, 0 to 1: by a grid of {@value #GRID} by
   * {@value #GRID} points over it, so to some hundredths.
   */
  static double shareOutside(List<Point> outline, List<List<Point>> others) {
    double left = outline.stream().mapToDouble(Point::x).min().orElseThrow();
    double right = outline.stream().mapToDouble(Point::x).max().orElseThrow();
    double top = outline.stream().mapToDouble(Point::y).min().orElseThrow();
    double bottom = outline.stream().mapToDouble(Point::y).max().orElseThrow();
    int all = 0;
    int outside = 0;
    for (int i = 0; i < GRID * GRID; i++) {
      int row = i / GRID;
      double x = left + (right - left) * (i % GRID + 0.5) / GRID;
      double y = top + (bottom - top) * (row + 0.5) / GRID;
      Point point = new Point(x, y);
      if (contains(outline, point)) {
        all++;
        outside += others.stream().anyMatch(other -> contains(other, point)) ? 0 : 1;
      }
    }
    return all == 0 ? cornersOutside(outline, others) : (double) outside / all;
  }

  /** For what is too thin for the grid. */
  private static double cornersOutside(List<Point> outline, List<List<Point>> others) {
    long outside =
        outline.stream()
            .filter(corner -> others.stream().noneMatch(other -> contains(other, corner)))
            .count();
    return (double) outside / outline.size();
  }

  /** In square picture units. */
  public static double area(List<Point> outline) {
    double twice = 0;
    for (int i = 0; i < outline.size(); i++) {
      Point a = outline.get(i);
      Point b = outline.get((i + 1) % outline.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return Math.abs(twice) / 2;
  }

  /**
   * The convex hull of all places within a margin of these points, cut off at the picture's edges
   * and rounded outwards by at most 8 % of the margin.
   *
   * @param margin in picture units, above zero
   * @throws IllegalArgumentException without points, or without a margin
   */
  public static List<Point> around(List<Point> points, double margin, Picture picture) {
    if (points.isEmpty() || !(margin > 0)) {
      throw new IllegalArgumentException("no zone around %s by %s".formatted(points, margin));
    }
    double radius = margin / Math.cos(Math.PI / CORNERS);
    List<Point> grown = new ArrayList<>();
    for (Point point : points) {
      for (int k = 0; k < CORNERS; k++) {
        double angle = Math.PI * (2 * k + 1) / CORNERS;
        grown.add(
            new Point(
                clamp(point.x() + radius * Math.cos(angle), picture.width()),
                clamp(point.y() + radius * Math.sin(angle), picture.height())));
      }
    }
    return hull(grown);
  }

  private static double clamp(double value, double most) {
    return Math.max(0, Math.min(most, value));
  }

  /** The convex hull, by Andrew's monotone chain; three corners or more where the points span. */
  static List<Point> hull(List<Point> points) {
    List<Point> sorted =
        points.stream()
            .distinct()
            .sorted(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y))
            .toList();
    List<Point> hull = half(sorted);
    List<Point> back = new ArrayList<>(sorted);
    Collections.reverse(back);
    hull.addAll(half(back));
    return List.copyOf(hull);
  }

  private static List<Point> half(List<Point> sorted) {
    List<Point> chain = new ArrayList<>();
    for (Point point : sorted) {
      while (chain.size() > 1
          && turn(chain.get(chain.size() - 2), chain.get(chain.size() - 1), point) <= 0) {
        chain.remove(chain.size() - 1);
      }
      chain.add(point);
    }
    chain.remove(chain.size() - 1);
    return chain;
  }
}
