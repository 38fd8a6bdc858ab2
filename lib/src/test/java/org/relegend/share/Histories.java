package org.relegend.share;

import static org.relegend.map.BoardMapSamples.NOON;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Channel;
import org.relegend.map.ConfirmPlacement;
import org.relegend.map.Designator;
import org.relegend.map.Edit;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.Mating;
import org.relegend.map.Net;
import org.relegend.map.NetEdits;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Potential;
import org.relegend.map.RandomEdits;
import org.relegend.map.Subject;
import org.relegend.map.ZoneId;

/** Two people's work on one small map, drawn from a seed. */
final class Histories {
  private static final List<Evidence> EVIDENCE = List.of(Evidence.values());

  private Histories() {}

  static MapVersions of(long seed) {
    Random random = new Random(seed);
    BoardMap base = BoardMapSamples.generated(seed, 3 + random.nextInt(5), 2);
    base = worked(base, random, "base", 4);
    return new MapVersions(
        base,
        worked(base, random, "Ada", 1 + random.nextInt(8)),
        worked(base, random, "Ben", 1 + random.nextInt(8)));
  }

  /** The map after up to so many edits of one author. */
  static BoardMap worked(BoardMap first, Random random, String author, int edits) {
    BoardMap map = first;
    for (int i = 0; i < edits; i++) {
      try {
        map = one(map, random, author).applyTo(map);
      } catch (EditRefusedException refused) {
        // then this edit is not part of the history
      }
    }
    return map;
  }

  private static Edit one(BoardMap map, Random random, String author) {
    if (map.parts().isEmpty() || map.nets().size() < 2) {
      return MapTables.PARTS.put(BoardMapSamples.twoPin("R" + random.nextInt(9), "resistor", "1k"));
    }
    Part part = map.parts().at(random.nextInt(map.parts().size()));
    Part second = map.parts().at(random.nextInt(map.parts().size()));
    Net net = map.nets().at(random.nextInt(map.nets().size()));
    Net other = map.nets().at(random.nextInt(map.nets().size()));
    PinRef pin = part.ref(part.pins().get(random.nextInt(part.pins().size())));
    Attestation says =
        new Attestation(
            EVIDENCE.get(random.nextInt(EVIDENCE.size())),
            author,
            NOON.plusSeconds(random.nextInt(9)));
    return switch (random.nextInt(21)) {
      case 0, 1 -> place(part, pin, net, random, says);
      case 2 ->
          map.placements().isEmpty()
              ? place(part, pin, net, random, says)
              : new ConfirmPlacement(
                  map.placements().at(random.nextInt(map.placements().size())).key(), says);
      case 3, 4 -> new NetEdits.MovePin(pin, net.id(), says);
      case 5 -> new NetEdits.MovePin(pin, new NetId("NEW" + random.nextInt(3)), says);
      case 6 ->
          new NetEdits.JoinPins(
              net.id(),
              List.of(
                  net.members().isEmpty()
                      ? new Net.Member(pin, List.of(says))
                      : new Net.Member(net.pins().get(0), List.of(says))));
      case 7 -> split(net, random);
      case 8 -> new NetEdits.MergeNets(net.id(), other.id());
      case 9 -> new NetEdits.DetachPin(net.id(), pin);
      case 10 -> MapTables.NETS.remove(net.id());
      case 11 -> MapTables.NETS.put(net.withName("NAME" + random.nextInt(4)));
      case 12 ->
          MapTables.NETS.put(
              net.withPotential(new Potential(Potential.Nature.DC, random.nextInt(3))));
      case 13 -> MapTables.PARTS.put(part.withDesignator(new Designator("X" + random.nextInt(5))));
      case 14 -> MapTables.PARTS.put(part.withValue(random.nextInt(4) + "k"));
      case 15 -> MapTables.PARTS.remove(part.id());
      case 16 ->
          MapTables.ZONES.put(
              new HazardZone(
                  new ZoneId("z" + random.nextInt(2)),
                  TOP,
                  HazardZone.Kind.MAINS,
                  List.of(new Point(0, 0), new Point(9, 0), new Point(random.nextInt(5), 9)),
                  "",
                  List.of(says)));
      case 17 -> MapTables.ZONES.remove(new ZoneId("z" + random.nextInt(2)));
      case 18 ->
          part.id().equals(second.id())
              ? MapTables.CHANNELS.put(new Channel("A", "left" + random.nextInt(3), ""))
              : MapTables.MATINGS.put(new Mating(part.id(), second.id()));
      case 19 ->
          map.pictures().size() == 2 && random.nextInt(4) == 0
              ? MapTables.PICTURES.remove(random.nextBoolean() ? PAGE : TOP)
              : MapTables.PARTS.put(
                  BoardMapSamples.twoPin("R" + random.nextInt(12), "resistor", "1k"));
      default -> RandomEdits.one(map, random);
    };
  }

  private static Edit place(Part part, PinRef pin, Net net, Random random, Attestation says) {
    Subject subject =
        switch (random.nextInt(3)) {
          case 0 -> Subject.of(part.id());
          case 1 -> Subject.of(pin);
          default -> Subject.of(net.id());
        };
    Point at = new Point(random.nextInt(4), random.nextInt(4));
    return MapTables.PLACEMENTS.put(
        new Placement(random.nextBoolean() ? TOP : PAGE, subject, at, says));
  }

  /** Half of a net's pins become a net of their own. */
  private static Edit split(Net net, Random random) {
    List<Net.Member> half =
        new ArrayList<>(net.members().subList(net.members().size() / 2, net.members().size()));
    NetId id = new NetId("SPLIT" + random.nextInt(3));
    Net rest = net.withMembers(net.members().subList(0, net.members().size() / 2));
    return new org.relegend.map.EditGroup(
        "Split",
        List.of(MapTables.NETS.put(rest), MapTables.NETS.put(Net.named(id).withMembers(half))));
  }
}
