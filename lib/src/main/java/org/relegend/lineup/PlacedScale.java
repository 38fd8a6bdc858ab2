package org.relegend.lineup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.relegend.map.BoardMap;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;

/**
 * The scale of a photo where two pins of a part are placed whose package has known measures. It is
 * right near that part on a photo taken square on; a slanted one changes with the place.
 *
 * @param part whose pins tell it
 * @param middle between the two pins
 */
public record PlacedScale(PartId part, Point middle, Scale scale) {
  /** Families whose pins can't be bent elsewhere: their pitch is the board's. */
  private static final List<String> STIFF = List.of("DIP", "SIP");

  /** By the part nearest to a point of the photo; none where no such part is placed. */
  public static Optional<PlacedScale> near(BoardMap map, PictureId photo, Point at) {
    Map<PartId, Map<Integer, Point>> pins = new HashMap<>();
    for (Placement placement : map.placements()) {
      if (placement.picture().equals(photo)
          && placement.subject() instanceof Subject.OfPin pin
          && pin.pin().pin().matches("[1-9][0-9]{0,2}")) {
        pins.computeIfAbsent(pin.pin().part(), part -> new HashMap<>())
            .put(Integer.parseInt(pin.pin().pin()), placement.at());
      }
    }
    List<PlacedScale> scales = new ArrayList<>();
    pins.forEach(
        (part, places) ->
            map.part(part)
                .flatMap(PlacedScale::shape)
                .flatMap(shape -> of(part, shape, places))
                .ifPresent(scales::add));
    return scales.stream()
        .min(
            Comparator.<PlacedScale>comparingDouble(scale -> scale.middle.distance(at))
                .thenComparing(PlacedScale::part));
  }

  private static Optional<PackageShape> shape(Part part) {
    return STIFF.stream().anyMatch(part.casing()::startsWith)
        ? Packages.known().named(part.casing())
        : Optional.empty();
  }

  /** By the two placed pins that are furthest apart in the package. */
  private static Optional<PlacedScale> of(
      PartId part, PackageShape shape, Map<Integer, Point> places) {
    double span = 0;
    Optional<PlacedScale> best = Optional.empty();
    for (Map.Entry<Integer, Point> a : places.entrySet()) {
      for (Map.Entry<Integer, Point> b : places.entrySet()) {
        boolean usable =
            a.getKey() < b.getKey()
                && b.getKey() <= shape.pins().size()
                && !a.getValue().equals(b.getValue());
        double millimetres = usable ? shape.pin(a.getKey()).distance(shape.pin(b.getKey())) : 0;
        if (millimetres > span) {
          span = millimetres;
          Point middle =
              new Point(
                  (a.getValue().x() + b.getValue().x()) / 2,
                  (a.getValue().y() + b.getValue().y()) / 2);
          best =
              Optional.of(
                  new PlacedScale(
                      part, middle, Scale.between(a.getValue(), b.getValue(), millimetres)));
        }
      }
    }
    return best;
  }
}
