package org.relegend.hazard;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import org.relegend.circuit.Node;
import org.relegend.circuit.NodeStep;

/**
 * Where a high voltage can come to when a valve, a semiconductor or an integrated circuit on the
 * way fails: all that direct current can reach, up to where nets tell their own voltage.
 */
final class FaultReach {
  /** From where, by which step, and how much. */
  record Origin(Node source, NodeStep step, double volts) {}

  private record Waiting(Node node, Node source, double volts) {}

  private final Map<Node, Origin> found = new LinkedHashMap<>();

  FaultReach(CautiousTraversal walk, MainsReach mains, Declared declared, Map<Node, Double> high) {
    PriorityQueue<Waiting> open =
        new PriorityQueue<>(Comparator.comparing((Waiting waiting) -> -waiting.volts()));
    high.forEach((node, volts) -> open.add(new Waiting(node, node, volts)));
    Set<Node> known = high.keySet();
    while (!open.isEmpty()) {
      Waiting from = open.remove();
      for (NodeStep step : walk.steps(from.node())) {
        Node to = step.to();
        boolean onwards =
            step.conduction().passesDirect()
                && !walk.isOf(step.in().part(), "supply")
                && !known.contains(to)
                && !mains.has(to)
                && !declared.isTold(to);
        if (onwards
            && found.putIfAbsent(to, new Origin(from.source(), step, from.volts())) == null) {
          open.add(new Waiting(to, from.source(), from.volts()));
        }
      }
    }
  }

  Map<Node, Origin> found() {
    return found;
  }

  Collection<Node> nodes() {
    return List.copyOf(found.keySet());
  }
}
