package org.relegend.hazard;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.relegend.circuit.Conduction;
import org.relegend.circuit.Node;
import org.relegend.circuit.NodeStep;
import org.relegend.map.Part;
import org.relegend.map.PinRef;

/**
 * The nodes at which diodes shift an alternating voltage, so that it adds to what is there: behind
 * a capacitor (half-wave doubler, ladder), and at an end of a winding that nothing holds while two
 * diodes are at that end alone (Delon). At a bridge both ends have diodes: nothing is added.
 */
final class Clamps {
  private final CautiousTraversal walk;
  private final Declared declared;
  private final Swings swings;
  private final Set<Node> nodes = new LinkedHashSet<>();

  Clamps(CautiousTraversal walk, Declared declared, Swings swings) {
    this.walk = walk;
    this.declared = declared;
    this.swings = swings;
    swings
        .all()
        .forEach(
            (node, swing) -> {
              if (!declared.isFixed(node)
                  && (swing.coupled() ? isClamped(node) : isFreeLeg(node))) {
                nodes.add(node);
              }
            });
  }

  boolean has(Node node) {
    return nodes.contains(node);
  }

  Set<Node> nodes() {
    return nodes;
  }

  /** All that they can add, in volts. */
  double sum() {
    return nodes.stream().mapToDouble(node -> 2 * swings.peak(node)).sum();
  }

  private boolean isClamped(Node node) {
    return walk.steps(node).stream().anyMatch(walk::isDiode);
  }

  private boolean isFreeLeg(Node node) {
    Set<Node> below = beyond(node, false);
    Set<Node> above = beyond(node, true);
    return !below.isEmpty() && !above.isEmpty() && isFree(node) && !isBridged(node, below, above);
  }

  private Set<Node> beyond(Node node, boolean along) {
    Set<Node> found = new LinkedHashSet<>();
    for (NodeStep step : walk.steps(node)) {
      if (walk.isDiode(step) && walk.isAlong(step) == along) {
        found.add(step.to());
      }
    }
    return found;
  }

  private Set<Node> held(Node node) {
    return walk.from(
        List.of(node),
        step ->
            step.passage().isPresent()
                || step.conduction() == Conduction.WIRE
                || step.conduction() == Conduction.CONTACT
                || step.conduction() == Conduction.WINDING);
  }

  /** Whether no wire or winding holds it at a voltage that is told. */
  private boolean isFree(Node node) {
    Swings.Swing swing = swings.at(node).orElseThrow();
    return held(node).stream().noneMatch(declared::isFixed)
        && held(swing.source()).stream().noneMatch(declared::isFixed);
  }

  /** Another end has its diodes to the same two rails, and both are ends of one plain winding. */
  private boolean isBridged(Node node, Set<Node> below, Set<Node> above) {
    Set<Node> winding = held(node);
    for (Node other : swings.all().keySet()) {
      boolean rails =
          !other.equals(node)
              && beyond(other, false).stream().anyMatch(below::contains)
              && beyond(other, true).stream().anyMatch(above::contains);
      if (rails && (winding.contains(other) ? !isTapped(winding) : !hasWinding(winding))) {
        return true;
      }
    }
    return false;
  }

  private boolean hasWinding(Set<Node> nodes) {
    return nodes.stream().anyMatch(node -> pins(node).anyMatch(pin -> isWinding(pin)));
  }

  private java.util.stream.Stream<PinRef> pins(Node node) {
    return walk.pins(node).stream();
  }

  private boolean isWinding(PinRef pin) {
    return walk.isOf(pin.part(), "transformer");
  }

  /** Whether a winding among these has more than two pins: its halves may add. */
  private boolean isTapped(Set<Node> nodes) {
    return nodes.stream()
        .flatMap(this::pins)
        .filter(this::isWinding)
        .map(PinRef::part)
        .distinct()
        .flatMap(id -> walk.circuit().map().part(id).stream())
        .anyMatch(part -> on(part, nodes) > 2);
  }

  private long on(Part part, Set<Node> nodes) {
    return part.pins().stream()
        .filter(pin -> walk.circuit().nodesOf(part.ref(pin)).stream().anyMatch(nodes::contains))
        .count();
  }
}
