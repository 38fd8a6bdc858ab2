package org.relegend.viewer.command;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.relegend.lineup.CarriedPlacement;
import org.relegend.map.Placement;
import org.relegend.store.Json;

/** How commands tell where something is. */
final class PlacementText {
  private PlacementText() {}

  static Json json(Placement placement) {
    return Json.object()
        .put("picture", placement.picture().text())
        .put("of", placement.subject().toString())
        .put("x", placement.at().x())
        .put("y", placement.at().y())
        .put("evidence", placement.best().word());
  }

  static Json json(CarriedPlacement carried) {
    return Json.object()
        .put("picture", carried.picture().text())
        .put("of", carried.source().subject().toString())
        .put("x", carried.at().x())
        .put("y", carried.at().y())
        .put("radius95", carried.radius95())
        .put("from", carried.source().picture().text())
        .put("via", Json.array(carried.via(), picture -> Json.of(picture.text())));
  }

  /** "carried to solder 2310,641 within 4"; empty for none. */
  static String carriedText(List<CarriedPlacement> carried) {
    return carried.stream()
        .map(
            place ->
                String.format(
                    Locale.ROOT,
                    "%s %.0f,%.0f within %.0f",
                    place.picture(),
                    place.at().x(),
                    place.at().y(),
                    place.radius95()))
        .collect(Collectors.collectingAndThen(Collectors.joining("; "), PlacementText::carried));
  }

  private static String carried(String places) {
    return places.isEmpty() ? "" : "carried to " + places;
  }

  /** The first placement on each picture: "component 2310,641; page-1 220,300". */
  static String text(List<Placement> placements) {
    return placements.stream()
        .collect(
            Collectors.toMap(
                Placement::picture,
                PlacementText::one,
                (first, second) -> first,
                java.util.TreeMap::new))
        .values()
        .stream()
        .collect(Collectors.joining("; "));
  }

  private static String one(Placement placement) {
    return String.format(
        Locale.ROOT, "%s %.0f,%.0f", placement.picture(), placement.at().x(), placement.at().y());
  }
}
