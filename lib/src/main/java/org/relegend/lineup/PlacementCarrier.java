package org.relegend.lineup;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.relegend.map.BoardMap;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.map.ZoneId;

/**
 * Carries what is placed on one picture to every other that line-ups reach. What a picture has of
 * its own is never carried to it. Made for one map; each picture is worked out when first asked
 * for. Not for use by several threads at once.
 */
public final class PlacementCarrier {
  /** How surely a carried hazard zone holds all of the zone that was drawn. */
  private static final double SURE = 0.999;

  /** Points to an edge of a zone at which the error is looked at. */
  private static final int ALONG = 4;

  private final BoardMap map;
  private final LineUps lineUps;
  private final LineUpChains chains;
  private final Map<PictureId, Map<Placement.Key, CarriedPlacement>> places = new HashMap<>();
  private final Map<PictureId, List<CarriedZone>> zones = new HashMap<>();

  private PlacementCarrier(BoardMap map, LineUps lineUps) {
    this.map = map;
    this.lineUps = lineUps;
    chains = new LineUpChains(lineUps);
  }

  public static PlacementCarrier of(BoardMap map) {
    return new PlacementCarrier(map, LineUps.of(map));
  }

  /** For the map as it is now; line-ups that haven't changed aren't fitted again. */
  public PlacementCarrier after(BoardMap changed) {
    return new PlacementCarrier(changed, lineUps.after(changed));
  }

  public LineUps lineUps() {
    return lineUps;
  }

  /** Everything that is carried to a picture, by subject; of several sources the least error. */
  public List<CarriedPlacement> on(PictureId picture) {
    return List.copyOf(byKey(picture).values());
  }

  /** What is carried there under this key. */
  public Optional<CarriedPlacement> find(Placement.Key key) {
    return Optional.ofNullable(byKey(key.picture()).get(key));
  }

  private Map<Placement.Key, CarriedPlacement> byKey(PictureId picture) {
    return places.computeIfAbsent(picture, this::carriedTo);
  }

  /**
   * The map with all that is carried added to it, placements and hazard zones: what can be seen.
   * Never what is edited or saved.
   */
  public BoardMap seen() {
    if (map.lineUps().isEmpty()) {
      return map;
    }
    List<Placement> added = new ArrayList<>();
    for (Picture picture : map.pictures()) {
      on(picture.id()).forEach(carried -> added.add(carried.asPlacement()));
    }
    return zoned().with(MapTables.PLACEMENTS, map.placements().withAll(added));
  }

  /**
   * The map with the hazard zones that are carried added to it, and nothing else: for whoever shows
   * or names places. Never what is edited or saved.
   */
  public BoardMap zoned() {
    if (map.lineUps().isEmpty() || map.zones().isEmpty()) {
      return map;
    }
    List<HazardZone> grown = new ArrayList<>();
    for (Picture picture : map.pictures()) {
      zonesOn(picture.id()).forEach(carried -> grown.add(carried.zone()));
    }
    return map.with(MapTables.ZONES, map.zones().withAll(grown));
  }

  /** Where a subject is carried to, by picture; nothing where it is placed itself. */
  public List<CarriedPlacement> of(Subject subject) {
    return map.pictures().stream()
        .flatMap(picture -> on(picture.id()).stream())
        .filter(carried -> carried.source().subject().equals(subject))
        .toList();
  }

  /** Hazard zones that are carried to a picture. */
  public List<CarriedZone> zonesOn(PictureId picture) {
    return zones.computeIfAbsent(picture, this::zonesCarriedTo);
  }

  /** Where a point of one picture lies on another, over the chain with the least error. */
  public Optional<Chained> carry(PictureId from, Point at, PictureId to) {
    return reached(from, at, to)
        .map(found -> new Chained(found.at(), found.error(), found.chain(), found.via()));
  }

  /** A point that was carried, with all that carried it. */
  public record Chained(Point at, Uncertainty error, LineUp chain, List<PictureId> via) {
    public Chained {
      via = List.copyOf(via);
    }
  }

  private Optional<LineUpChains.Reached> reached(PictureId from, Point at, PictureId to) {
    return lineUps.from(from).isEmpty()
        ? Optional.empty()
        : Optional.ofNullable(chains.from(from, at).get(to));
  }

  private Map<Placement.Key, CarriedPlacement> carriedTo(PictureId id) {
    Optional<Picture> picture = map.picture(id);
    if (picture.isEmpty() || lineUps.from(id).isEmpty()) {
      return Map.of();
    }
    Set<Subject> own = new HashSet<>();
    map.placements().stream()
        .filter(placement -> placement.picture().equals(id))
        .forEach(placement -> own.add(placement.subject()));
    Map<Placement.Key, CarriedPlacement> best = new TreeMap<>();
    Map<Placement.Key, Double> radii = new HashMap<>();
    for (Placement placement : map.placements()) {
      if (!placement.picture().equals(id) && !own.contains(placement.subject())) {
        carried(placement, picture.get())
            .ifPresent(
                carried -> {
                  Placement.Key key =
                      new Placement.Key(id, placement.subject(), placement.ordinal());
                  double size = carried.error().xx() + carried.error().yy();
                  if (size < radii.getOrDefault(key, Double.POSITIVE_INFINITY)) {
                    radii.put(key, size);
                    best.put(key, carried);
                  }
                });
      }
    }
    return best;
  }

  private Optional<CarriedPlacement> carried(Placement placement, Picture to) {
    return reached(placement.picture(), placement.at(), to.id())
        .filter(found -> to.contains(found.at()))
        .map(
            found ->
                new CarriedPlacement(
                    placement,
                    to.id(),
                    found.at(),
                    carried(placement.outline(), found.chain()).orElse(List.of()),
                    found.error(),
                    found.via()));
  }

  /** All corners, or none where one lies beyond the horizon. */
  private static Optional<List<Point>> carried(List<Point> outline, LineUp chain) {
    List<Point> carried = new ArrayList<>();
    for (Point corner : outline) {
      Optional<Point> at = chain.carry(corner);
      if (at.isEmpty()) {
        return Optional.empty();
      }
      carried.add(at.get());
    }
    return Optional.of(carried);
  }

  private List<CarriedZone> zonesCarriedTo(PictureId id) {
    Optional<Picture> picture = map.picture(id);
    if (picture.isEmpty() || lineUps.from(id).isEmpty()) {
      return List.of();
    }
    List<CarriedZone> carried = new ArrayList<>();
    for (HazardZone zone : map.zones()) {
      if (!zone.picture().equals(id)) {
        Stream.concat(Stream.of(NormalisedPairs.centroid(zone.outline())), zone.outline().stream())
            .flatMap(point -> reached(zone.picture(), point, id).stream())
            .findFirst()
            .ifPresent(found -> carried.addAll(carried(zone, found, picture.get())));
      }
    }
    return carried;
  }

  /** Where part of a zone can't be carried, it may be anywhere: the whole picture is the zone. */
  private static List<CarriedZone> carried(
      HazardZone zone, LineUpChains.Reached found, Picture to) {
    Optional<List<Point>> outline = carried(zone.outline(), found.chain());
    double margin = outline.isPresent() ? margin(zone.outline(), found.chain()) : 0;
    boolean known = outline.isPresent() && Double.isFinite(margin);
    List<List<Point>> parts =
        known
            ? GrownOutline.of(outline.get(), margin, to)
            : List.of(Extent.of(to.width(), to.height()).corners());
    List<CarriedZone> zones = new ArrayList<>();
    for (List<Point> part : parts) {
      String id = zone.id() + "~" + to.id() + (parts.size() > 1 ? "~" + zones.size() : "");
      zones.add(
          new CarriedZone(
              zone,
              new HazardZone(
                  new ZoneId(shortened(id)),
                  to.id(),
                  zone.kind(),
                  part,
                  zone.note(),
                  zone.evidence()),
              found.via()));
    }
    return zones;
  }

  private static String shortened(String id) {
    return id.length() <= 100 ? id : id.substring(0, 90) + Integer.toHexString(id.hashCode());
  }

  /** The largest error along the outline. */
  private static double margin(List<Point> outline, LineUp chain) {
    double margin = 0;
    for (int i = 0; i < outline.size(); i++) {
      Point a = outline.get(i);
      Point b = outline.get((i + 1) % outline.size());
      for (int k = 0; k < ALONG; k++) {
        double share = (double) k / ALONG;
        Point on = new Point(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
        margin = Math.max(margin, chain.uncertainty(on).radius(SURE));
      }
    }
    return margin;
  }
}
