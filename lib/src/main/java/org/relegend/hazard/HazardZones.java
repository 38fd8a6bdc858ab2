package org.relegend.hazard;

import java.util.List;
import org.relegend.map.BoardMap;
import org.relegend.map.HazardZone;
import org.relegend.map.Placement;

/** Which places lie in hazard zones. That none is found never means that there is no danger. */
public final class HazardZones {
  private HazardZones() {}

  /** The zones of its picture that a place lies in or overlaps, in the order of the map. */
  public static List<HazardZone> over(BoardMap map, Placement place) {
    return map.zones().stream().filter(zone -> isOver(zone, place)).toList();
  }

  /** Whether a place is on the zone's picture, and lies in the zone or overlaps it. */
  public static boolean isOver(HazardZone zone, Placement place) {
    return zone.picture().equals(place.picture())
        && (ZoneOutline.contains(zone.outline(), place.at())
            || ZoneOutline.overlap(zone.outline(), place.outline()));
  }
}
