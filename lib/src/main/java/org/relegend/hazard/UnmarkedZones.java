package org.relegend.hazard;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.Picture;
import org.relegend.map.Point;
import org.relegend.map.ZoneId;

/**
 * Zones around dangers that nobody outlined, one for each place that lies outside of drawn ones.
 * They are there to be asked of before a place is shown; they are no drawn zones, and never stored.
 */
public final class UnmarkedZones {
  /** What their ids begin with; no person's zone has such an id. */
  private static final String MARK = "unmarked~";

  /** What stands there: that it was followed, not seen. */
  public static final String NOTE =
      "Followed along the circuit as the map has it; nobody outlined it.";

  /** How far a hand is kept off: a part of the picture's width. */
  private static final double MARGIN = 0.01;

  private UnmarkedZones() {}

  /** In the order in which the dangers were found. */
  public static List<HazardZone> of(BoardMap map, Hazards hazards) {
    List<HazardZone> zones = new ArrayList<>();
    for (UnmarkedHazard danger : hazards.unmarked()) {
      map.picture(danger.picture())
          .ifPresent(picture -> zones.add(zone(danger, picture, zones.size())));
    }
    return zones;
  }

  private static HazardZone zone(UnmarkedHazard danger, Picture picture, int number) {
    List<Point> around = new ArrayList<>(danger.outline());
    around.add(danger.at());
    return around(around, picture, danger.kind(), Integer.toString(number));
  }

  /** A zone around where a part should lie that carries something of this kind. */
  public static HazardZone around(
      List<Point> places, Picture picture, HazardZone.Kind kind, String name) {
    double margin = MARGIN * Math.max(picture.width(), picture.height());
    return new HazardZone(
        new ZoneId(MARK + name),
        picture.id(),
        kind,
        ZoneOutline.around(places, margin, picture),
        NOTE,
        List.of(new Attestation(Evidence.INFERRED, "circuit", Instant.EPOCH)));
  }

  /** Whether a zone is one of these. */
  public static boolean has(HazardZone zone) {
    return zone.id().text().startsWith(MARK);
  }
}
