package org.relegend.hazard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Node;
import org.relegend.circuit.NodeStep;
import org.relegend.map.BoardMap;
import org.relegend.map.HazardZone;
import org.relegend.map.Net;
import org.relegend.map.PartId;

/** Puts together all that is found out about one circuit. */
final class HazardFinder {
  private final Circuit circuit;
  private final VoltageLimits limits;
  private final CautiousTraversal walk;
  private final MainsReach mains;
  private final PeakVoltages peaks;
  private final List<MainsSign> signs;
  private final UnknownSupply unknown;
  private final List<StoredCharge> charges;
  private final Map<Node, NodeHazard> hazards = new LinkedHashMap<>();

  HazardFinder(Circuit circuit, VoltageLimits limits) {
    this.circuit = circuit;
    this.limits = limits;
    this.walk = new CautiousTraversal(circuit);
    this.mains = new MainsFinder(walk).find();
    this.peaks = new PeakVoltages(walk, mains);
    this.signs = new MainsSigns(walk, peaks.declared(), mains).find();
    this.unknown = new UnknownSupply(walk, mains, peaks, signs);
    this.charges = new ChargeFinder(walk, mains, peaks, unknown).find();
  }

  Hazards find() {
    List<HazardousNode> reached = new ArrayList<>();
    mains.nodes().forEach(node -> reached.add(live(node)));
    peaks.nodes().stream()
        .filter(node -> !mains.has(node) && isHigh(node))
        .forEach(node -> reached.add(high(node)));
    List<Across> across = new RailPairs(walk, peaks, limits).find();
    Set<Node> done = new LinkedHashSet<>();
    reached.forEach(one -> done.add(one.node()));
    for (Across pair : across) {
      Stream.of(pair.positive(), pair.negative())
          .filter(node -> !mains.has(node) && done.add(node))
          .forEach(node -> reached.add(rail(pair, node)));
    }
    reached.forEach(one -> hazards.put(one.node(), carries(one)));
    unknown
        .reasons()
        .forEach((node, why) -> hazards.merge(node, NodeHazard.unknown(node, why), this::surer));
    charges.forEach(this::suspectByRating);
    List<HazardousNode> faults = faults(reached);
    faults.forEach(one -> hazards.putIfAbsent(one.node(), fault(one)));
    hazards.replaceAll((node, hazard) -> hazard.withFigures(volts(hazard), joules(node)));
    UnmarkedHazardFinder finder = new UnmarkedHazardFinder(circuit, reached, noteworthy());
    return new Hazards(
        limits,
        mains,
        reached,
        faults,
        across,
        signs,
        hazards.values().stream().filter(h -> h.grade() == NodeHazard.Grade.UNKNOWN).toList(),
        circuit.map().nets().stream()
            .filter(net -> Hazards.lacksVolts(net.potential()))
            .map(Net::id)
            .sorted()
            .toList(),
        new Cells(walk).find(),
        charges,
        finder.unmarked(),
        finder.unplaced(),
        hazards);
  }

  private List<StoredCharge> noteworthy() {
    return charges.stream().filter(charge -> Hazards.isKnownToCount(charge, limits)).toList();
  }

  private BoardMap map() {
    return circuit.map();
  }

  private String name(Node node) {
    return map().nameOf(node.subject());
  }

  private boolean isHigh(Node node) {
    boolean swing = peaks.swings().at(node).filter(s -> limits.isHighAc(s.rms())).isPresent();
    return !peaks.declared().isGround(node)
        && (swing
            || peaks.bounds(node).anyMatch(b -> !b.alternating() && limits.isHighDc(b.volts())));
  }

  private HazardousNode live(Node node) {
    Node source = node;
    Optional<NodeStep> step = mains.arrivals().getOrDefault(node, Optional.empty());
    while (step.isPresent()) {
      source = step.get().from();
      step = mains.arrivals().getOrDefault(source, Optional.empty());
    }
    return new HazardousNode(
        node,
        walk.pins(node),
        HazardZone.Kind.MAINS,
        Math.abs(peaks.declared().potential(source).volts()),
        source,
        mains.wayTo(node),
        false);
  }

  private HazardousNode high(Node node) {
    PeakVoltages.Bound bound = peaks.at(node).orElseThrow();
    double result = peaks.declared().potential(bound.source()).volts();
    double rms = peaks.swings().at(node).map(Swings.Swing::rms).orElse(0.0);
    double volts = bound.alternating() ? rms : bound.volts();
    return new HazardousNode(
        node,
        walk.pins(node),
        HazardZone.Kind.HIGH_VOLTAGE,
        volts,
        bound.source(),
        peaks.wayTo(node),
        Math.abs(Math.abs(volts) - Math.abs(result)) > 1e-6);
  }

  private HazardousNode rail(Across pair, Node node) {
    Node other = node.equals(pair.positive()) ? pair.negative() : pair.positive();
    return new HazardousNode(
        node, walk.pins(node), HazardZone.Kind.HIGH_VOLTAGE, pair.volts(), other, List.of(), true);
  }

  private List<HazardousNode> faults(List<HazardousNode> reached) {
    Map<Node, Double> high = new LinkedHashMap<>();
    reached.stream()
        .filter(one -> one.kind() == HazardZone.Kind.HIGH_VOLTAGE && isHigh(one.node()))
        .forEach(one -> high.put(one.node(), one.volts()));
    List<HazardousNode> faults = new ArrayList<>();
    new FaultReach(walk, mains, peaks.declared(), high)
        .found()
        .forEach(
            (node, origin) -> {
              if (reached.stream().noneMatch(one -> one.node().equals(node))) {
                faults.add(fault(node, origin));
              }
            });
    return faults;
  }

  private HazardousNode fault(Node node, FaultReach.Origin origin) {
    return new HazardousNode(
        node,
        walk.pins(node),
        HazardZone.Kind.HIGH_VOLTAGE,
        origin.volts(),
        origin.source(),
        List.of(origin.step().in().part()),
        false);
  }

  /** A sum is no upper bound where an untold winding feeds the node too. */
  private NodeHazard surer(NodeHazard known, NodeHazard untold) {
    boolean bound =
        known.kind().filter(kind -> kind == HazardZone.Kind.MAINS).isPresent()
            || !unknown.isFed(known.node());
    return bound ? known : untold;
  }

  private NodeHazard carries(HazardousNode one) {
    String from =
        one.node().equals(one.source()) ? "told at the net" : "from " + name(one.source());
    String way = one.through().isEmpty() ? "" : " through " + names(one.through());
    String sum = one.computed() ? ", computed" : "";
    String what = one.kind() == HazardZone.Kind.MAINS ? "mains " : "high voltage ";
    return hazard(one, NodeHazard.Grade.CARRIES, what + from + way + sum);
  }

  private NodeHazard fault(HazardousNode one) {
    return hazard(
        one,
        NodeHazard.Grade.FAULT,
        "high voltage from %s if %s fails".formatted(name(one.source()), names(one.through())));
  }

  private static NodeHazard hazard(HazardousNode one, NodeHazard.Grade grade, String reason) {
    return new NodeHazard(
        one.node(),
        grade,
        Optional.of(one.kind()),
        OptionalDouble.of(Math.abs(one.volts())),
        OptionalDouble.empty(),
        reason);
  }

  private String names(List<PartId> parts) {
    int shown = 4;
    String first = String.join(", ", parts.stream().limit(shown).map(map()::nameOf).toList());
    return parts.size() > shown ? first + " and more" : first;
  }

  /** A capacitor is made for more than it meets: where nothing else tells, it tells. */
  private void suspectByRating(StoredCharge charge) {
    double rated = charge.rated().orElse(0);
    if (limits.isHighDc(rated)) {
      for (Node node : charge.ends()) {
        boolean stated = peaks.declared().isTold(node) || unknown.isExplained(node);
        if (!stated) {
          String parts = names(charge.capacitors());
          String why = "%s there, made for %.0f V, and no voltage is told".formatted(parts, rated);
          hazards.putIfAbsent(node, NodeHazard.unknown(node, why));
        }
      }
    }
  }

  private OptionalDouble volts(NodeHazard hazard) {
    double known = peaks.at(hazard.node()).map(b -> Math.abs(b.volts())).orElse(0.0);
    double most =
        Math.max(known, hazard.grade() == NodeHazard.Grade.UNKNOWN ? 0 : hazard.volts().orElse(0));
    return most > 0 ? OptionalDouble.of(most) : OptionalDouble.empty();
  }

  private OptionalDouble joules(Node node) {
    return charges.stream()
        .filter(charge -> charge.ends().contains(node))
        .flatMap(charge -> charge.discharge().stream())
        .mapToDouble(Discharge::joules)
        .max();
  }
}
