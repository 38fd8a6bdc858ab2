package org.relegend.hazard;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.relegend.circuit.Node;
import org.relegend.circuit.NodeStep;
import org.relegend.circuit.Passage;

/**
 * Nodes that are one for good: by links, resistors of no ohms, plugged connectors. Fuses may blow
 * and switches may stand open, so they don't count when one asks whether something discharges.
 */
final class MergedNodes {
  private static final Set<Passage> LASTING =
      Set.of(Passage.LINK, Passage.ZERO_OHM, Passage.CONNECTOR);

  private final CautiousTraversal walk;
  private final Map<Node, List<Node>> groups = new HashMap<>();

  MergedNodes(CautiousTraversal walk) {
    this.walk = walk;
  }

  /** All nodes that are one with this, itself among them; the same list for each of them. */
  List<Node> group(Node node) {
    List<Node> known = groups.get(node);
    if (known != null) {
      return known;
    }
    List<Node> group = List.copyOf(walk.from(Set.of(node), MergedNodes::lasts));
    group.forEach(member -> groups.put(member, group));
    return group;
  }

  /** One node that stands for all of the group. */
  Node head(Node node) {
    return group(node).get(0);
  }

  private static boolean lasts(NodeStep step) {
    return step.in().equals(step.out()) || step.passage().filter(LASTING::contains).isPresent();
  }
}
