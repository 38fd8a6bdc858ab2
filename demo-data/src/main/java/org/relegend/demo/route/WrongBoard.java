package org.relegend.demo.route;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.relegend.demo.design.Artwork;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.Hole;
import org.relegend.demo.design.PlacedPart;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Spot;
import org.relegend.demo.design.Tables;
import org.relegend.demo.draw.Noise;

/**
 * Another board made of the same sorts of part as the leveller's: what a line-up must not take for
 * it. Laid out from the other end, with parts of like size dealt out anew.
 */
public final class WrongBoard {
  private static final Rules ROUGH = new Rules(0.8, 1.0, 0.45, 0, 1);

  private WrongBoard() {}

  /** One board a seed. */
  public static Design design(long seed) {
    Design known = Tables.leveller();
    Map<String, Spot> places = dealt(known, seed);
    List<PlacedPart> parts = new ArrayList<>();
    for (PlacedPart part : known.parts()) {
      parts.add(
          new PlacedPart(
              part.designator(),
              part.kind(),
              part.value(),
              part.channel(),
              places.getOrDefault(part.designator(), part.at())));
    }
    List<PlacedPin> pins = new ArrayList<>();
    for (PlacedPin pin : known.pins()) {
      Spot from = known.part(pin.part()).at();
      Spot to = places.getOrDefault(pin.part(), from);
      Spot at = new Spot(pin.at().x() - from.x() + to.x(), pin.at().y() - from.y() + to.y());
      pins.add(
          new PlacedPin(pin.part(), pin.pin(), pin.role(), pin.builtNet(), pin.drawnNet(), at));
    }
    List<Hole> holes =
        List.of(
            new Hole(new Spot(5, 5), 3.4),
            new Hole(new Spot(known.width() - 5, known.height() - 5), 3.4),
            new Hole(new Spot(known.width() - 75, 81), 4.2));
    String number = "QUILLMARSH  T6" + seed % 10 + "-A  ISS 1";
    return new Design(number, known.width(), known.height(), parts, pins, holes);
  }

  /** Copper for such a board; some of it may touch where it should not. */
  public static Artwork artwork(Design design) {
    return new Router(design, ROUGH).routeRoughly();
  }

  /** Every part at the mirrored place of some part of its own size. */
  private static Map<String, Spot> dealt(Design known, long seed) {
    Map<String, List<PlacedPart>> alike = new LinkedHashMap<>();
    for (PlacedPart part : known.parts()) {
      List<PlacedPart> single = new ArrayList<>(List.of(part));
      alike.merge(
          part.kind() + Bodies.size(part),
          single,
          (some, more) -> {
            some.addAll(more);
            return some;
          });
    }
    Map<String, Spot> places = new LinkedHashMap<>();
    for (List<PlacedPart> group : alike.values()) {
      for (int k = 0; k < group.size(); k++) {
        int other = (int) (Noise.at(seed, k, group.size()) * (k + 1));
        PlacedPart moved = group.get(k);
        group.set(k, group.get(other));
        group.set(other, moved);
      }
      List<PlacedPart> order = known.parts().stream().filter(group::contains).toList();
      for (int k = 0; k < group.size(); k++) {
        Spot at = order.get(k).at();
        places.put(group.get(k).designator(), new Spot(known.width() - at.x(), at.y()));
      }
    }
    return places;
  }
}
