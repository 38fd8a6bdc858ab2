package org.relegend.hazard;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import org.relegend.circuit.Node;
import org.relegend.circuit.NodeStep;

/**
 * The alternating voltage at each node, from what nets and the mains tell: it passes wires,
 * resistors, windings and capacitors whole, which bounds it from above.
 */
final class Swings {
  /**
   * An alternating voltage.
   *
   * @param rms root mean square
   * @param source where it is told
   * @param step the last on the way from there; empty at the source
   * @param coupled whether it came through a capacitor, so that its mean is free
   */
  record Swing(double rms, Node source, Optional<NodeStep> step, boolean coupled) {
    double peak() {
      return rms * Math.sqrt(2);
    }
  }

  /** Farads from which a capacitor is a reservoir and no suppressor (common practice). */
  private static final double RESERVOIR = 1e-6;

  private final CautiousTraversal walk;
  private final Declared declared;
  private final MainsReach mains;
  private final Map<Node, Swing> swings = new HashMap<>();

  Swings(CautiousTraversal walk, Declared declared, MainsReach mains) {
    this.walk = walk;
    this.declared = declared;
    this.mains = mains;
    spread();
  }

  private record Waiting(Node node, Swing swing) {}

  private void spread() {
    PriorityQueue<Waiting> open =
        new PriorityQueue<>(
            Comparator.comparing((Waiting w) -> w.swing().coupled())
                .thenComparing(w -> -w.swing().rms()));
    declared
        .alternating()
        .forEach(
            (node, rms) ->
                open.add(new Waiting(node, new Swing(rms, node, Optional.empty(), false))));
    while (!open.isEmpty()) {
      Waiting next = open.remove();
      Swing known = swings.get(next.node());
      if (known == null || next.swing().rms() > known.rms() + 1e-9 && !isSource(next.node())) {
        Swing kept =
            known == null || known.coupled() == next.swing().coupled()
                ? next.swing()
                : new Swing(next.swing().rms(), next.swing().source(), next.swing().step(), false);
        swings.put(next.node(), kept);
        onwards(open, next.node(), kept);
      }
    }
  }

  private boolean isSource(Node node) {
    return declared.isAlternating(node) || declared.isInlet(node);
  }

  private void onwards(PriorityQueue<Waiting> open, Node node, Swing swing) {
    boolean steady = !isSource(node) && hasReservoir(node);
    for (NodeStep step : walk.steps(node)) {
      boolean capacitor = walk.isCapacitor(step);
      if (capacitor && steady) {
        continue;
      }
      boolean leaves = mains.has(node) && !mains.has(step.to());
      if (!declared.isFixed(step.to()) && !leaves && (capacitor || walk.passesSurely(step))) {
        open.add(
            new Waiting(
                step.to(),
                new Swing(
                    swing.rms(), swing.source(), Optional.of(step), swing.coupled() || capacitor)));
      }
    }
  }

  /** The middle of a doubler: so large a capacitor to 0 V leaves nothing that swings. */
  private boolean hasReservoir(Node node) {
    return walk.steps(node).stream()
        .filter(step -> walk.isCapacitor(step) && declared.isGround(step.to()))
        .flatMap(step -> walk.circuit().map().part(step.in().part()).stream())
        .anyMatch(part -> WorstCaseValues.farads(part).orElse(0) >= RESERVOIR);
  }

  Optional<Swing> at(Node node) {
    return Optional.ofNullable(swings.get(node));
  }

  double peak(Node node) {
    return at(node).map(Swing::peak).orElse(0.0);
  }

  Map<Node, Swing> all() {
    return swings;
  }
}
