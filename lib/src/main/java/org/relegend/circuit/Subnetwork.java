package org.relegend.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import org.relegend.map.PartId;

/**
 * What lies between two nodes: every node and part on some way from the one to the other that
 * passes no node twice. Empty where no way leads there.
 *
 * @param nodes the two ends among them
 * @param parts in order
 */
public record Subnetwork(Set<Node> nodes, List<PartId> parts) {
  private static final Subnetwork NONE = new Subnetwork(Set.of(), List.of());

  public Subnetwork {
    nodes = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(nodes));
    parts = List.copyOf(parts);
  }

  /**
   * With one more edge from end to end, the ways between the ends become circles, and all circles
   * through one edge make up one block of the graph.
   */
  static Subnetwork between(
      Node from, Node to, Function<Node, List<NodeStep>> steps, Predicate<NodeStep> allowed) {
    Map<Node, Set<Node>> neighbours = new HashMap<>();
    List<NodeStep> taken = new ArrayList<>();
    for (Node node : ReachableNodes.from(List.of(from), steps, allowed).nodes()) {
      for (NodeStep step : steps.apply(node)) {
        if (allowed.test(step)) {
          neighbours.computeIfAbsent(node, key -> new LinkedHashSet<>()).add(step.to());
          neighbours.computeIfAbsent(step.to(), key -> new LinkedHashSet<>()).add(node);
          taken.add(step);
        }
      }
    }
    if (from.equals(to) || !neighbours.containsKey(to)) {
      return NONE;
    }
    return of(BiconnectedBlock.of(from, to, neighbours), taken);
  }

  private static Subnetwork of(Set<Node> block, List<NodeStep> taken) {
    Set<PartId> parts = new TreeSet<>();
    for (NodeStep step : taken) {
      if (block.contains(step.from()) && block.contains(step.to())) {
        parts.add(step.in().part());
        parts.add(step.out().part());
      }
    }
    return new Subnetwork(block, List.copyOf(parts));
  }
}
