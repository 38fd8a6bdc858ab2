package org.relegend.hazard;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Node;
import org.relegend.map.HazardZone;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.PinRef;
import org.relegend.map.Point;
import org.relegend.map.Potential;

/**
 * All that a map tells of where it can hurt. What isn't in here is not known to be harmless: a map
 * shows what people recorded, and nothing is ever concluded to carry no danger.
 *
 * @param limits what counted as high voltage
 * @param reached nodes with mains, nearest first, then nodes with high voltage, while all works
 * @param faults nodes that high voltage comes to if a part fails
 * @param across rails between which the voltage is high
 * @param signs what looks like mains, though nothing says that it is
 * @param unknown nodes of unknown voltage that are taken as high until someone tells it
 * @param noVolts nets declared to carry a voltage, without saying how much
 * @param batteries which stay live with the plug out
 * @param charges every capacitor, those of most energy first
 * @param unmarked placed dangers that lie in no fitting zone
 * @param unplaced reached pins that are on no photo
 * @param nodes every node of which anything is known, with what is known
 */
public record Hazards(
    VoltageLimits limits,
    MainsReach mains,
    List<HazardousNode> reached,
    List<HazardousNode> faults,
    List<Across> across,
    List<MainsSign> signs,
    List<NodeHazard> unknown,
    List<NetId> noVolts,
    List<Battery> batteries,
    List<StoredCharge> charges,
    List<UnmarkedHazard> unmarked,
    List<PinRef> unplaced,
    Map<Node, NodeHazard> nodes) {
  /** How far a proposed zone goes beyond what it is drawn around: a part of the picture's width. */
  private static final double MARGIN = 0.02;

  public Hazards {
    reached = List.copyOf(reached);
    faults = List.copyOf(faults);
    across = List.copyOf(across);
    signs = List.copyOf(signs);
    unknown = List.copyOf(unknown);
    batteries = List.copyOf(batteries);
    nodes = Collections.unmodifiableMap(new LinkedHashMap<>(nodes));
    noVolts = List.copyOf(noVolts);
    charges = List.copyOf(charges);
    unmarked = List.copyOf(unmarked);
    unplaced = List.copyOf(unplaced);
  }

  public static Hazards of(Circuit circuit, VoltageLimits limits) {
    return new HazardFinder(circuit, limits).find();
  }

  /** Whether a net is told to carry a voltage, but not how much. */
  static boolean lacksVolts(Potential potential) {
    return potential.volts() == 0
        && (potential.nature() == Potential.Nature.AC
            || potential.nature() == Potential.Nature.DC
            || potential.nature() == Potential.Nature.MAINS);
  }

  /** What is known of one node; never that nothing is there. */
  public NodeHazard at(Node node) {
    return Optional.ofNullable(nodes.get(node)).orElseGet(() -> notKnown(node));
  }

  /** What is known of a net. */
  public NodeHazard at(NetId net) {
    return at(Node.of(net));
  }

  /** What is known of a pin, by all the nets it is on. */
  public NodeHazard at(Circuit circuit, PinRef pin) {
    return NodeHazard.surest(circuit.nodesOf(pin).stream().map(this::at).toList())
        .orElseGet(() -> notKnown(Node.of(pin)));
  }

  private NodeHazard notKnown(Node node) {
    return new NodeHazard(
        node,
        NodeHazard.Grade.NOT_KNOWN,
        Optional.empty(),
        OptionalDouble.empty(),
        joules(node),
        "the map holds nothing against it, which says nothing of the instrument");
  }

  private OptionalDouble joules(Node node) {
    return charges.stream()
        .filter(charge -> charge.ends().contains(node))
        .flatMap(charge -> charge.discharge().stream())
        .mapToDouble(Discharge::joules)
        .max();
  }

  /** Whether any mains is known of; that there isn't says nothing of the instrument. */
  public boolean knowsMains() {
    return !mains.nodes().isEmpty();
  }

  /**
   * Whether the cautions are to be read before anyone works on it: mains or high voltage reach
   * something, or a declared voltage, else what it is made for, charges a capacitor by as much as
   * counts. That it is false says nothing of the instrument.
   */
  public boolean callForCautions() {
    return !reached.isEmpty() || charges.stream().anyMatch(this::isKnownToCount);
  }

  private boolean isKnownToCount(StoredCharge charge) {
    return isKnownToCount(charge, limits);
  }

  /** By the declared voltages; or, where none is declared, by what its capacitors are made for. */
  static boolean isKnownToCount(StoredCharge charge, VoltageLimits limits) {
    return charge.basis() != StoredCharge.Basis.UNKNOWN && charge.isNoteworthy(limits);
  }

  /** What threatens at a part, placed or not: mains before high voltage before charge. */
  public Optional<HazardZone.Kind> threatAt(PartId part) {
    Optional<HazardZone.Kind> reachedBy =
        reached.stream()
            .filter(node -> node.pins().stream().anyMatch(pin -> pin.part().equals(part)))
            .map(HazardousNode::kind)
            .min(Comparator.naturalOrder());
    return reachedBy.or(
        () ->
            charges.stream()
                .filter(charge -> charge.capacitors().contains(part))
                .filter(this::isKnownToCount)
                .findFirst()
                .map(charge -> HazardZone.Kind.STORED_CHARGE));
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
    for (UnmarkedHazard danger : unmarked) {
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
              .map(shown -> ZoneOutline.around(around, margin(shown), shown))
              .ifPresent(
                  outline -> zones.add(new Proposal(place.picture(), place.kind(), outline)));
        });
    return zones;
  }

  private static double margin(Picture picture) {
    return MARGIN * Math.max(picture.width(), picture.height());
  }
}
