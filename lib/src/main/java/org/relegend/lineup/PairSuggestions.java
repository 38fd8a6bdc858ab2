package org.relegend.lineup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.relegend.map.Point;

/** Where on a picture a pair of clicks would serve best. */
public final class PairSuggestions {
  /** Share of the extent that corners are moved in by: things lie there, and lenses bend less. */
  private static final double INSET = 0.1;

  private static final int GRID = 8;

  private PairSuggestions() {}

  /** Four places that fix a line-up well: near the corners of the picture or of the board in it. */
  public static List<Point> first(Extent extent) {
    double dx = INSET * extent.width();
    double dy = INSET * extent.height();
    return new Extent(
            extent.left() + dx, extent.top() + dy, extent.right() - dx, extent.bottom() - dy)
        .corners();
  }

  /**
   * The spots nearest to such places: something there can be told from what surrounds it.
   *
   * @param spots distinct spots of the picture
   */
  static List<Point> first(Extent extent, List<Point> spots) {
    List<Point> left = new ArrayList<>(spots);
    List<Point> places = new ArrayList<>();
    for (Point wanted : first(extent)) {
      Point place = left.stream().min(Comparator.comparingDouble(wanted::distance)).orElse(wanted);
      left.remove(place);
      places.add(place);
    }
    return places;
  }

  /** The place of a picture where a line-up is weakest, which a further pair would mend most. */
  public static Point next(LineUp lineUp, Extent extent) {
    Point weakest = extent.centre();
    double largest = 0;
    for (int row = 0; row <= GRID; row++) {
      for (int column = 0; column <= GRID; column++) {
        double across = INSET + (1 - 2 * INSET) * column / GRID;
        double down = INSET + (1 - 2 * INSET) * row / GRID;
        Point p =
            new Point(
                extent.left() + across * extent.width(), extent.top() + down * extent.height());
        double radius = lineUp.carry(p).isPresent() ? lineUp.radius95(p) : 0;
        if (radius > largest) {
          largest = radius;
          weakest = p;
        }
      }
    }
    return weakest;
  }
}
