package org.relegend.demo;

import java.util.ArrayList;
import java.util.List;
import org.relegend.demo.design.Spot;
import org.relegend.demo.photo.Shot;
import org.relegend.demo.truth.Hull;
import org.relegend.demo.truth.Place;
import org.relegend.demo.truth.Truth;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.PictureId;
import org.relegend.map.ZoneId;

/** Where mains voltage and stored charge are on the pictures of the demo map. */
final class DemoZones {
  private static final List<Spot> MAINS = box(2, 2, 56, 62);
  private static final List<Spot> RESERVOIRS = box(56.5, 24.5, 73.5, 55);

  private DemoZones() {}

  /** Mains and reservoirs on one photo, and all of the tall parts, which lean over their pads. */
  static List<HazardZone> on(String picture, Shot shot, List<Place> truth) {
    List<Spot> mains = new ArrayList<>(seen(shot, MAINS));
    mains.addAll(bodies(picture, truth, "J1|F1|SW1|C1|R1|T1"));
    List<Spot> reservoirs = new ArrayList<>(seen(shot, RESERVOIRS));
    reservoirs.addAll(bodies(picture, truth, "C2|C3"));
    return List.of(
        zone("mains-" + picture, picture, HazardZone.Kind.MAINS, Hull.of(mains), "230 V AC"),
        zone(
            "charge-" + picture,
            picture,
            HazardZone.Kind.STORED_CHARGE,
            Hull.of(reservoirs),
            "Reservoir capacitors, 23 V; bleed to 1 V in about 15 s while R2 and R3 are whole."));
  }

  /** Mains on a page: round all that is joined to it. */
  static List<HazardZone> onPage(String picture, List<Place> truth) {
    List<Spot> around = new ArrayList<>();
    for (Place place : truth) {
      boolean mains = place.subject().matches("(J1|F1|SW1|C1|R1|T1)(\\.[LN12])?");
      boolean box = place.kind() == Place.Kind.BODY || place.kind() == Place.Kind.PIN;
      if (place.picture().equals(picture) && mains && box) {
        List<Spot> points = place.outline().isEmpty() ? List.of(place.at()) : place.outline();
        for (Spot at : points) {
          around.addAll(box(at.x() - 8, at.y() - 8, at.x() + 8, at.y() + 8));
        }
      }
    }
    HazardZone.Kind kind = HazardZone.Kind.MAINS;
    return List.of(zone("mains-" + picture, picture, kind, Hull.of(around), "230 V AC"));
  }

  private static List<Spot> bodies(String picture, List<Place> truth, String parts) {
    return truth.stream()
        .filter(place -> place.picture().equals(picture) && place.kind() == Place.Kind.BODY)
        .filter(place -> place.subject().matches(parts))
        .flatMap(place -> place.outline().stream())
        .toList();
  }

  private static List<Spot> seen(Shot shot, List<Spot> corners) {
    return corners.stream().map(corner -> Truth.seen(shot, corner)).toList();
  }

  private static HazardZone zone(
      String id, String picture, HazardZone.Kind kind, List<Spot> outline, String note) {
    return new HazardZone(
        new ZoneId(id),
        new PictureId(picture),
        kind,
        outline.stream().map(DemoMap::point).toList(),
        note,
        List.of(DemoMap.attested(Evidence.SEEN)));
  }

  private static List<Spot> box(double left, double top, double right, double bottom) {
    return List.of(
        new Spot(left, top), new Spot(right, top), new Spot(right, bottom), new Spot(left, bottom));
  }
}
