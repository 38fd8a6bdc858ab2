package org.relegend.hazard;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Node;
import org.relegend.circuit.Step;
import org.relegend.map.HazardZone;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.PinRef;
import org.relegend.map.Point;

/**
 * All that a map tells of where it can hurt. What isn't in here is not known to be harmless: a map
 * shows what people recorded, and nothing is ever concluded to carry no danger.
 *
 * @param limits what counted as high voltage
 * @param reached nodes with mains, nearest first, then nodes with high voltage
 * @param noVolts nets declared to carry a voltage, without saying how much
 * @param charges every capacitor, those of most energy first
 * @param unmarked placed dangers that lie in no fitting zone
 * @param unplaced reached pins that are on no photo
 */
public record Hazards(
    LimitSet limits,
    MainsReach mains,
    List<Reached> reached,
    List<NetId> noVolts,
    List<StoredCharge> charges,
    List<Unmarked> unmarked,
    List<PinRef> unplaced) {
  /** How far a proposed zone goes beyond what it is drawn around: a part of the picture's width. */
  private static final double MARGIN = 0.02;

  public Hazards {
    reached = List.copyOf(reached);
    noVolts = List.copyOf(noVolts);
    charges = List.copyOf(charges);
    unmarked = List.copyOf(unmarked);
    unplaced = List.copyOf(unplaced);
  }

  public static Hazards of(Circuit circuit, LimitSet limits) {
    Walk walk = new Walk(circuit);
    MainsReach mains = new MainsFinder(walk).find();
    HighVoltage high = HighVoltage.of(walk, mains, limits);
    List<Reached> reached =
        Stream.concat(
                mains.nodes().stream().map(node -> live(walk, mains, node)),
                high.found().keySet().stream().map(node -> high(walk, high, node)))
            .toList();
    List<StoredCharge> charges = new ChargeFinder(walk, mains).find();
    UnmarkedFinder finder =
        new UnmarkedFinder(
            circuit,
            reached,
            charges.stream()
                .filter(charge -> charge.basis() == StoredCharge.Basis.DECLARED)
                .filter(charge -> charge.isNoteworthy(limits))
                .toList());
    return new Hazards(
        limits,
        mains,
        reached,
        List.copyOf(high.unknown()),
        charges,
        finder.unmarked(),
        finder.unplaced());
  }

  private static Reached live(Walk walk, MainsReach mains, Node node) {
    Node source = node;
    Optional<Step> step = mains.arrivals().getOrDefault(node, Optional.empty());
    while (step.isPresent()) {
      source = step.get().from();
      step = mains.arrivals().getOrDefault(source, Optional.empty());
    }
    return new Reached(
        node,
        walk.pins(node),
        HazardZone.Kind.MAINS,
        volts(walk.circuit(), source),
        source,
        mains.wayTo(node));
  }

  private static double volts(Circuit circuit, Node node) {
    return node instanceof Node.OfNet net
        ? circuit.map().net(net.net()).map(Net::potential).map(p -> Math.abs(p.volts())).orElse(0.0)
        : 0;
  }

  private static Reached high(Walk walk, HighVoltage high, Node node) {
    HighVoltage.Origin origin = Objects.requireNonNull(high.found().get(node));
    Deque<PartId> way = new ArrayDeque<>();
    Optional<Step> step = origin.step();
    while (step.isPresent()) {
      way.addFirst(step.get().out().part());
      way.addFirst(step.get().in().part());
      step =
          Optional.ofNullable(high.found().get(step.get().from()))
              .flatMap(HighVoltage.Origin::step);
    }
    return new Reached(
        node,
        walk.pins(node),
        HazardZone.Kind.HIGH_VOLTAGE,
        origin.potential().volts(),
        Node.of(origin.net()),
        new ArrayList<>(new LinkedHashSet<>(way)));
  }

  /** Whether any mains is known of; that there isn't says nothing of the instrument. */
  public boolean knowsMains() {
    return !mains.nodes().isEmpty();
  }

  /**
   * Whether the cautions are to be read before anyone works on it: mains or high voltage reach
   * something, or a declared voltage charges a capacitor by as much as counts. That it is false
   * says nothing of the instrument.
   */
  public boolean callForCautions() {
    return !reached.isEmpty() || charges.stream().anyMatch(this::isKnownToCount);
  }

  private boolean isKnownToCount(StoredCharge charge) {
    return charge.basis() == StoredCharge.Basis.DECLARED && charge.isNoteworthy(limits);
  }

  /** A zone that could be drawn: the hull of what lies outside on one picture, with a margin. */
  public record Proposal(PictureId picture, HazardZone.Kind kind, List<Point> outline) {
    public Proposal {
      outline = List.copyOf(outline);
    }
  }

  /** A zone for what lies outside on each picture, one for each kind. Zones that are there stay. */
  public List<Proposal> proposals(Circuit circuit) {
    record Place(PictureId picture, HazardZone.Kind kind) {}
    Map<Place, List<Point>> points = new LinkedHashMap<>();
    for (Unmarked danger : unmarked) {
      List<Point> around =
          points.computeIfAbsent(
              new Place(danger.picture(), danger.kind()), place -> new ArrayList<>());
      around.add(danger.at());
      around.addAll(danger.outline());
    }
    List<Proposal> zones = new ArrayList<>();
    points.forEach(
        (place, around) -> {
          Optional<Picture> picture = circuit.map().picture(place.picture());
          picture
              .map(shown -> Outline.around(around, margin(shown), shown))
              .ifPresent(
                  outline -> zones.add(new Proposal(place.picture(), place.kind(), outline)));
        });
    return zones;
  }

  private static double margin(Picture picture) {
    return MARGIN * Math.max(picture.width(), picture.height());
  }
}
