package org.relegend.hazard;

import java.util.LinkedHashMap;
import java.util.Map;
import org.relegend.circuit.Node;
import org.relegend.map.Net;
import org.relegend.map.Potential;

/** What nets are declared to carry. Where mains comes in, no other word counts. */
final class Declared {
  private final CautiousTraversal walk;
  private final MainsReach mains;

  Declared(CautiousTraversal walk, MainsReach mains) {
    this.walk = walk;
    this.mains = mains;
  }

  Potential potential(Node node) {
    return node instanceof Node.OfNet net
        ? walk.circuit().map().net(net.net()).map(Net::potential).orElse(Potential.UNKNOWN)
        : Potential.UNKNOWN;
  }

  /** Whether mains comes in here. */
  boolean isInlet(Node node) {
    return mains.has(node)
        && mains.arrivals().getOrDefault(node, java.util.Optional.empty()).isEmpty();
  }

  boolean isGround(Node node) {
    Potential.Nature nature = potential(node).nature();
    return !isInlet(node)
        && (nature == Potential.Nature.REFERENCE || nature == Potential.Nature.EARTH);
  }

  boolean isAlternating(Node node) {
    return potential(node).nature() == Potential.Nature.AC && potential(node).volts() != 0;
  }

  /** Whether its voltage is told, so that nothing else is concluded about it. */
  boolean isFixed(Node node) {
    Potential potential = potential(node);
    boolean stated = potential.nature() == Potential.Nature.DC && potential.volts() != 0;
    return !isInlet(node) && (stated || isGround(node));
  }

  /** Whether anything is told of its voltage: also an alternating one. */
  boolean isTold(Node node) {
    return isFixed(node) || isAlternating(node);
  }

  /** The nets of a direct voltage, with it. */
  Map<Node, Double> direct() {
    Map<Node, Double> found = new LinkedHashMap<>();
    for (Net net : walk.circuit().map().nets()) {
      Node node = Node.of(net.id());
      if (isFixed(node) && net.potential().nature() == Potential.Nature.DC) {
        found.put(node, net.potential().volts());
      }
    }
    return found;
  }

  /** The nodes of an alternating voltage, with its root mean square; those of the mains first. */
  Map<Node, Double> alternating() {
    Map<Node, Double> found = new LinkedHashMap<>();
    for (Node node : mains.nodes()) {
      if (isInlet(node)) {
        double volts = Math.abs(potential(node).volts());
        boolean stated = potential(node).nature() == Potential.Nature.MAINS && volts > 0;
        found.put(node, stated ? volts : MainsFinder.VOLTS);
      }
    }
    for (Net net : walk.circuit().map().nets()) {
      if (isAlternating(Node.of(net.id()))) {
        found.putIfAbsent(Node.of(net.id()), Math.abs(net.potential().volts()));
      }
    }
    return found;
  }
}
