package org.relegend.hazard;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.relegend.circuit.Node;
import org.relegend.circuit.Step;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Potential;

/**
 * Nets whose declared voltage is above the limits, and nets of unknown voltage that direct current
 * can reach from there: the voltage of an anode is seldom declared, and it is high all the same.
 * The walk stops at nets of declared voltage, at reference and earth, and at what mains reaches.
 *
 * @param found each node to the declared net it gets its voltage from, and the step that came there
 *     first; nothing where it is declared itself
 * @param unknown nets declared to carry a voltage, without saying how much
 */
record HighVoltage(Map<Node, Origin> found, Set<NetId> unknown) {
  /** Where a high voltage comes from. */
  record Origin(NetId net, Potential potential, Optional<Step> step) {}

  static HighVoltage of(Walk walk, MainsReach mains, LimitSet limits) {
    Map<Node, Origin> found = new LinkedHashMap<>();
    Set<NetId> unknown = new TreeSet<>();
    Deque<Node> open = new ArrayDeque<>();
    for (Net net : walk.circuit().map().nets()) {
      Node node = Node.of(net.id());
      if (lacksVolts(net.potential())) {
        unknown.add(net.id());
      }
      if (!mains.has(node) && isHigh(net.potential(), limits)) {
        found.put(node, new Origin(net.id(), net.potential(), Optional.empty()));
        open.add(node);
      }
    }
    while (!open.isEmpty()) {
      Node from = open.remove();
      Origin origin = Objects.requireNonNull(found.get(from));
      for (Step step : walk.steps(from)) {
        boolean onwards =
            step.conduction().passesDirect() && !mains.has(step.to()) && isOpen(walk, step.to());
        Origin next = new Origin(origin.net(), origin.potential(), Optional.of(step));
        if (onwards && found.putIfAbsent(step.to(), next) == null) {
          open.add(step.to());
        }
      }
    }
    return new HighVoltage(found, unknown);
  }

  private static boolean lacksVolts(Potential potential) {
    return potential.volts() == 0
        && (potential.nature() == Potential.Nature.AC
            || potential.nature() == Potential.Nature.DC
            || potential.nature() == Potential.Nature.MAINS);
  }

  private static boolean isHigh(Potential potential, LimitSet limits) {
    return switch (potential.nature()) {
      case AC -> limits.isHighAc(potential.volts());
      case DC -> limits.isHighDc(potential.volts());
      default -> false;
    };
  }

  /** Whether nothing is known of a node's voltage. */
  private static boolean isOpen(Walk walk, Node node) {
    if (!(node instanceof Node.OfNet net)) {
      return true;
    }
    Potential potential =
        walk.circuit().map().net(net.net()).map(Net::potential).orElse(Potential.UNKNOWN);
    return potential.nature() == Potential.Nature.UNKNOWN || lacksVolts(potential);
  }
}
