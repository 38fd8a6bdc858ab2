package org.relegend.map;

import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import java.util.Random;

/** Edits drawn from a seed that fit the map they are drawn for. */
public final class RandomEdits {
  private RandomEdits() {}

  /** Applies up to 40 edits; tells how many changed the map. */
  public static int applySome(EditHistory history, long seed) {
    Random random = new Random(seed);
    int changed = 0;
    for (int i = 0; i < 40; i++) {
      try {
        if (history.apply(one(history.current(), random))) {
          changed++;
        }
      } catch (EditRefusedException refused) {
        // a refused edit leaves the map as it was, which the laws check
      }
    }
    return changed;
  }

  /** One edit of a random sort, of random parts of this map. */
  public static Edit one(BoardMap map, Random random) {
    Part part = map.parts().at(random.nextInt(map.parts().size()));
    Part other = map.parts().at(random.nextInt(map.parts().size()));
    Net net = map.nets().at(random.nextInt(map.nets().size()));
    Net second = map.nets().at(random.nextInt(map.nets().size()));
    PinRef pin = part.ref(part.pins().get(random.nextInt(part.pins().size())));
    Point at = new Point(random.nextInt(4000), random.nextInt(3000));
    Attestation seen = says(Evidence.SEEN);
    return switch (random.nextInt(15)) {
      case 0 -> MapTables.PARTS.put(part.withValue(random.nextInt(100) + "n"));
      case 1 -> MapTables.PARTS.put(BoardMapSamples.twoPin("C" + random.nextInt(99), "cap", "1n"));
      case 2 -> map.parts().size() > 2 ? MapTables.PARTS.remove(part.id()) : rename(part);
      case 3 -> new NetEdits.MovePin(pin, net.id(), seen);
      case 4 -> new NetEdits.DetachPin(net.id(), pin);
      case 5 ->
          map.nets().size() > 2 ? new NetEdits.MergeNets(net.id(), second.id()) : rename(part);
      case 6 -> new NetEdits.JoinPins(net.id(), List.of(new Net.Member(pin, List.of(seen))));
      case 7 ->
          MapTables.PLACEMENTS.put(new Placement(BoardMapSamples.TOP, Subject.of(pin), at, seen));
      case 8 ->
          MapTables.PLACEMENTS.remove(
              new Placement.Key(BoardMapSamples.TOP, Subject.of(part.id()), 1));
      case 9 -> rename(part);
      case 10 ->
          part.id().equals(other.id())
              ? rename(part)
              : MapTables.TWINS.put(
                  new TwinPair(Subject.of(part.id()), Subject.of(other.id()), List.of(seen)));
      case 11 ->
          MapTables.DEVIATIONS.put(
              new ChannelDeviation(
                  List.of(Subject.of(part.id())),
                  ChannelDeviation.Aspect.MISSING,
                  ChannelDeviation.Cause.DESIGN,
                  List.of(seen),
                  ""));
      case 12 -> MapTables.LINE_UPS.put(pairs(at, random));
      case 13 -> MapTables.LINE_UPS.remove(pairs(at, random).key());
      default ->
          MapTables.DISCREPANCIES.put(
              new DrawingDiscrepancy(
                  Subject.of(pin),
                  DrawingDiscrepancy.Aspect.NET,
                  second.id().text(),
                  List.of(seen),
                  ""));
    };
  }

  private static PicturePairs pairs(Point at, Random random) {
    PicturePairs.Spot spot = new PicturePairs.Spot(at, new Point(random.nextInt(4000), 7));
    return new PicturePairs(
        BoardMapSamples.TOP,
        random.nextBoolean() ? BoardMapSamples.PAGE : new PictureId("gone"),
        PicturePairs.Origin.CLICKED,
        List.of(spot),
        List.of(says(Evidence.SEEN)));
  }

  private static Edit rename(Part part) {
    return MapTables.PARTS.put(
        part.withDesignator(new Designator("X" + part.designator().text().hashCode() % 100)));
  }
}
