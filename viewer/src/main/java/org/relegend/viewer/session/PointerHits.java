package org.relegend.viewer.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.relegend.hazard.ZoneOutline;
import org.relegend.map.BoardMap;
import org.relegend.map.Box;
import org.relegend.map.HazardZone;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;

/** What is meant by pointing at a place of a picture. */
public final class PointerHits {
  private PointerHits() {}

  /**
   * The placement pointed at: the nearest pad or net label within reach, else the smallest body
   * around the point, else the nearest body within reach.
   */
  public static Optional<Placement> at(BoardMap map, Click click) {
    List<Placement> here = on(map, click.picture());
    return nearest(here, click, false)
        .or(() -> smallestAround(here, click.at()))
        .or(() -> nearest(here, click, true));
  }

  /** All placements whose point lies in a rectangle between two corners. */
  public static List<Placement> within(BoardMap map, PictureId picture, Point a, Point b) {
    double left = Math.min(a.x(), b.x());
    double right = Math.max(a.x(), b.x());
    double top = Math.min(a.y(), b.y());
    double bottom = Math.max(a.y(), b.y());
    return on(map, picture).stream()
        .filter(p -> p.at().x() >= left && p.at().x() <= right)
        .filter(p -> p.at().y() >= top && p.at().y() <= bottom)
        .toList();
  }

  /** Of these hazard zones those of a picture around a point. */
  public static List<HazardZone> zonesAt(List<HazardZone> zones, PictureId picture, Point at) {
    return zones.stream()
        .filter(zone -> zone.picture().equals(picture) && ZoneOutline.contains(zone.outline(), at))
        .toList();
  }

  /** Of these hazard zones those of a picture that reach into a box. */
  public static List<HazardZone> zonesIn(List<HazardZone> zones, PictureId picture, Box box) {
    List<Point> corners =
        List.of(
            new Point(box.left(), box.top()),
            new Point(box.right(), box.top()),
            new Point(box.right(), box.bottom()),
            new Point(box.left(), box.bottom()));
    return zones.stream()
        .filter(zone -> zone.picture().equals(picture))
        .filter(zone -> ZoneOutline.overlap(zone.outline(), corners))
        .toList();
  }

  private static List<Placement> on(BoardMap map, PictureId picture) {
    List<Placement> here = new ArrayList<>();
    for (Placement placement : map.placements()) {
      if (placement.picture().equals(picture)) {
        here.add(placement);
      }
    }
    return here;
  }

  private static Optional<Placement> nearest(List<Placement> here, Click click, boolean bodies) {
    return here.stream()
        .filter(placement -> isBody(placement) == bodies)
        .filter(placement -> placement.at().distance(click.at()) <= click.reach())
        .min(Comparator.comparingDouble(placement -> placement.at().distance(click.at())));
  }

  private static Optional<Placement> smallestAround(List<Placement> here, Point at) {
    return here.stream()
        .filter(placement -> ZoneOutline.contains(placement.outline(), at))
        .min(Comparator.comparingDouble(placement -> ZoneOutline.area(placement.outline())));
  }

  private static boolean isBody(Placement placement) {
    return placement.subject() instanceof Subject.OfPart
        || placement.subject() instanceof Subject.OfSection;
  }
}
