package org.relegend.viewer.mode.look;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.relegend.lineup.Fit;
import org.relegend.lineup.Fitter;
import org.relegend.lineup.PointPair;
import org.relegend.lineup.SideRelation;
import org.relegend.lineup.TransformModel;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardTurn;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Side;
import org.relegend.map.Subject;

/**
 * The same spot on the photo of a board's other side. What is placed on both photos lines them up;
 * with fewer than four such places, it is told from over which edge the board was turned, as if
 * both photos were taken square on and cut at the board's edge.
 */
public final class Flip {
  private Flip() {}

  public static Point spot(BoardMap map, Photo from, Photo to, Point here) {
    List<PointPair> pairs = pairs(map, from.id(), to.id());
    return pairs.size() >= TransformModel.HOMOGRAPHY.fewest()
        ? byPairs(pairs, here).filter(to::contains).orElseGet(() -> byEdge(from, to, here))
        : byEdge(from, to, here);
  }

  /** Pads alone: they go through the board, while bodies lean away from it. */
  private static List<PointPair> pairs(BoardMap map, PictureId from, PictureId to) {
    Map<Subject, Point> there = new HashMap<>();
    for (Placement placement : map.placements()) {
      if (placement.picture().equals(to) && placement.subject() instanceof Subject.OfPin) {
        there.put(placement.subject(), placement.at());
      }
    }
    List<PointPair> pairs = new ArrayList<>();
    for (Placement placement : map.placements()) {
      Point other = placement.picture().equals(from) ? there.get(placement.subject()) : null;
      if (other != null) {
        pairs.add(new PointPair(placement.at(), other));
      }
    }
    return pairs;
  }

  private static Optional<Point> byPairs(List<PointPair> pairs, Point here) {
    return Fitter.of(TransformModel.HOMOGRAPHY).expecting(SideRelation.OPPOSITE).fit(pairs)
            instanceof Fit fit
        ? fit.lineUp().carry(here)
        : Optional.empty();
  }

  private static Point byEdge(Photo from, Photo to, Point here) {
    BoardTurn turn = (from.side() == Side.SOLDER ? from : to).turn();
    double x = here.x() / from.width();
    double y = here.y() / from.height();
    return turn == BoardTurn.TOP_EDGE
        ? new Point(x * to.width(), (1 - y) * to.height())
        : new Point((1 - x) * to.width(), y * to.height());
  }
}
