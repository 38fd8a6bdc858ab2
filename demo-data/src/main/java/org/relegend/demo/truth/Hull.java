package org.relegend.demo.truth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.relegend.demo.design.Spot;

/** The convex hull of points, by Andrew's monotone chain (1979). */
public final class Hull {
  private Hull() {}

  /** The corners in order; fewer than three points come back as they are. */
  public static List<Spot> of(List<Spot> points) {
    List<Spot> sorted =
        points.stream()
            .distinct()
            .sorted(Comparator.comparingDouble(Spot::x).thenComparingDouble(Spot::y))
            .toList();
    if (sorted.size() < 3) {
      return sorted;
    }
    List<Spot> hull = new ArrayList<>();
    chain(sorted, hull, 0);
    int turn = hull.size();
    List<Spot> back = new ArrayList<>(sorted);
    java.util.Collections.reverse(back);
    chain(back, hull, turn - 1);
    hull.remove(hull.size() - 1);
    return hull;
  }

  private static void chain(List<Spot> points, List<Spot> hull, int floor) {
    for (Spot point : points) {
      if (!hull.isEmpty() && hull.get(hull.size() - 1).equals(point)) {
        continue;
      }
      while (hull.size() >= floor + 2
          && turn(hull.get(hull.size() - 2), hull.get(hull.size() - 1), point) <= 0) {
        hull.remove(hull.size() - 1);
      }
      hull.add(point);
    }
  }

  private static double turn(Spot a, Spot b, Spot c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
  }
}
