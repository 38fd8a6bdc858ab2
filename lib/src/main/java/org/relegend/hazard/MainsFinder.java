package org.relegend.hazard;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Conduction;
import org.relegend.circuit.Node;
import org.relegend.circuit.NodeStep;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Potential;

/**
 * Spreads mains over one circuit. Everything but capacitors is walked first. Then capacitors: one
 * that passes more than a touch current is walked wherever it leads; a small one is walked too,
 * unless it leads to what lies beyond a barrier: then it bridges the barrier and is named.
 */
final class MainsFinder {
  /** Leakage to be expected of equipment, root mean square; IEC 61010-1, 6.3.1, from memory. */
  static final double TOUCH_AMPS = 0.5e-3;

  /** Where nobody said: the higher of the two usual frequencies and mains voltages. */
  static final double HERTZ = 60;

  static final double VOLTS = 230;

  private final CautiousTraversal walk;
  private final Circuit circuit;
  private final MainsSources sources;
  private final List<Part> isolating;
  private final Map<Node, Optional<NodeStep>> arrivals = new LinkedHashMap<>();
  private final Deque<Node> open = new ArrayDeque<>();
  private final Map<String, NodeStep> capacitors = new LinkedHashMap<>();
  private final Map<String, MainsReach.Bridge> bridges = new LinkedHashMap<>();
  private final List<NodeStep> earthed = new ArrayList<>();
  private final Set<PartId> assumed = new TreeSet<>();

  MainsFinder(CautiousTraversal walk) {
    this(walk, new MainsSources(walk.circuit()));
  }

  MainsFinder(CautiousTraversal walk, MainsSources sources) {
    this.walk = walk;
    this.circuit = walk.circuit();
    this.sources = sources;
    this.isolating =
        circuit.map().parts().stream()
            .filter(
                part -> circuit.kindOf(part.id()).filter(k -> !k.barrier().isEmpty()).isPresent())
            .toList();
  }

  MainsReach find() {
    for (Node node : sources.sources()) {
      arrivals.put(node, Optional.empty());
      open.add(node);
    }
    do {
      spread();
    } while (passLarge() || passSmall());
    List<NetId> chassis = new ArrayList<>();
    for (Node node : arrivals.keySet()) {
      if (node instanceof Node.OfNet net && sources.nature(node) == Potential.Nature.REFERENCE) {
        chassis.add(net.net());
      }
    }
    MainsReach found =
        new MainsReach(
            arrivals,
            List.of(),
            bridges.values().stream().filter(this::stillBridges).toList(),
            earthed,
            chassis,
            List.copyOf(assumed),
            sources.contradictions());
    return new BarrierFinder(walk, found, isolating).withBarriers();
  }

  /** A small one matters no more where mains came to its far side by another way. */
  private boolean stillBridges(MainsReach.Bridge bridge) {
    return bridge.walked() || !isReached(bridge.far());
  }

  private void spread() {
    while (!open.isEmpty()) {
      for (NodeStep step : walk.steps(open.remove())) {
        if (sources.isEarth(step.to())) {
          earthed.add(step);
        } else if (walk.isCapacitor(step)) {
          capacitors.putIfAbsent(key(step), step);
        } else {
          arrive(step);
        }
      }
    }
  }

  private static String key(NodeStep step) {
    return step.in() + " " + step.out();
  }

  private void arrive(NodeStep step) {
    if (arrivals.putIfAbsent(step.to(), Optional.of(step)) == null) {
      open.add(step.to());
      if (step.conduction() == Conduction.UNKNOWN) {
        assumed.add(step.in().part());
      }
    }
  }

  private List<NodeStep> waiting() {
    return capacitors.values().stream().filter(step -> !arrivals.containsKey(step.to())).toList();
  }

  private boolean passLarge() {
    boolean passed = false;
    for (NodeStep step : waiting()) {
      if (isLarge(step)) {
        if (isBeyond(component(step.to()))) {
          bridges.put(key(step), bridge(step, true));
        }
        arrive(step);
        passed = true;
      }
    }
    return passed;
  }

  private boolean passSmall() {
    List<NodeStep> onwards = new ArrayList<>();
    for (NodeStep step : waiting()) {
      if (isBeyond(component(step.to()))) {
        bridges.put(key(step), bridge(step, false));
      } else {
        bridges.remove(key(step));
        onwards.add(step);
      }
    }
    onwards.forEach(this::arrive);
    return !onwards.isEmpty();
  }

  private MainsReach.Bridge bridge(NodeStep step, boolean walked) {
    return new MainsReach.Bridge(step.in(), step.out(), amps(step), walked);
  }

  /**
   * Its value counts, also where it is made for bridging: class Y says how it fails, not how much
   * it passes. One of unknown value is large. The currents of those side by side add up.
   */
  private boolean isLarge(NodeStep step) {
    return amps(step).isEmpty() || ampsBeside(step) > TOUCH_AMPS;
  }

  /** Of all capacitors between the same two nodes. */
  private double ampsBeside(NodeStep step) {
    return capacitors.values().stream()
        .filter(other -> other.from().equals(step.from()) && other.to().equals(step.to()))
        .mapToDouble(other -> amps(other).orElse(0))
        .sum();
  }

  /** I = 2 pi f C V. */
  private OptionalDouble amps(NodeStep step) {
    OptionalDouble farads =
        circuit
            .map()
            .part(step.in().part())
            .map(WorstCaseValues::farads)
            .orElse(OptionalDouble.empty());
    return farads.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(2 * Math.PI * HERTZ * farads.getAsDouble() * mainsVolts());
  }

  private double mainsVolts() {
    return arrivals.keySet().stream()
        .map(sources::potential)
        .filter(potential -> potential.nature() == Potential.Nature.MAINS)
        .mapToDouble(potential -> Math.abs(potential.volts()))
        .reduce(VOLTS, Math::max);
  }

  private Set<Node> component(Node from) {
    return walk.from(Set.of(from), step -> !walk.isCapacitor(step) && !sources.isEarth(step.to()));
  }

  /** Whether some part keeps these nodes from what mains has reached. */
  private boolean isBeyond(Set<Node> nodes) {
    for (Part part : isolating) {
      for (Pin near : part.pins()) {
        for (Pin far : part.pins()) {
          if (isReached(part.ref(near))
              && circuit.nodesOf(part.ref(far)).stream().anyMatch(nodes::contains)
              && walk.isolates(part, part.ref(near), part.ref(far))) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private boolean isReached(PinRef pin) {
    return circuit.nodesOf(pin).stream().anyMatch(arrivals::containsKey);
  }
}
