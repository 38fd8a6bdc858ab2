package org.relegend.demo.route;

import java.util.ArrayList;
import java.util.List;
import org.relegend.demo.design.Spot;

/** Drops the points of a run that lie straight between their neighbours. */
final class Corners {
  private Corners() {}

  static List<Spot> only(List<Spot> points) {
    List<Spot> kept = new ArrayList<>();
    for (int k = 0; k < points.size(); k++) {
      if (k == 0
          || k == points.size() - 1
          || bends(points.get(k - 1), points.get(k), points.get(k + 1))) {
        kept.add(points.get(k));
      }
    }
    return kept;
  }

  private static boolean bends(Spot before, Spot at, Spot after) {
    double ax = at.x() - before.x();
    double ay = at.y() - before.y();
    double bx = after.x() - at.x();
    double by = after.y() - at.y();
    return Math.abs(ax * by - ay * bx) > 0.02;
  }
}
