package org.relegend.viewer.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;

/**
 * Asks that a place of a picture, which lies on the desk, be brought into view.
 *
 * @param extent what should be seen whole: the outline of a body, or the place alone
 * @param comeFrom where the eye is now; the place is to appear at the same spot of the screen and
 *     at the same zoom, so that the two can be compared
 * @param closer whether to go so near that the extent can be made out; else the zoom stays
 */
public record ViewRequest(
    PictureId picture, Point at, List<Point> extent, Optional<Spot> comeFrom, boolean closer) {
  /** A place of a picture. */
  public record Spot(PictureId picture, Point at) {}

  public ViewRequest {
    extent = List.copyOf(extent);
  }

  public static ViewRequest at(Placement placement) {
    return new ViewRequest(
        placement.picture(), placement.at(), extentOf(placement), Optional.empty(), false);
  }

  /** So near a place that this and what belongs to it can be made out. */
  public static ViewRequest closeTo(Placement placement, List<Placement> belonging) {
    List<Point> extent = new ArrayList<>(extentOf(placement));
    belonging.forEach(other -> extent.addAll(extentOf(other)));
    return new ViewRequest(placement.picture(), placement.at(), extent, Optional.empty(), true);
  }

  public static ViewRequest at(Placement placement, Placement comeFrom) {
    Spot from = new Spot(comeFrom.picture(), comeFrom.at());
    return new ViewRequest(
        placement.picture(), placement.at(), extentOf(placement), Optional.of(from), false);
  }

  private static List<Point> extentOf(Placement placement) {
    return placement.outline().isEmpty() ? List.of(placement.at()) : placement.outline();
  }
}
