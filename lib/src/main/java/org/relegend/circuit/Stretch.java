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
public record Stretch(Set<Node> nodes, List<PartId> parts) {
  private static final Stretch NONE = new Stretch(Set.of(), List.of());

  public Stretch {
    nodes = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(nodes));
    parts = List.copyOf(parts);
  }

  /**
   * With one more edge from end to end, the ways between the ends become circles, and all circles
   * through one edge make up one block of the graph.
   */
  static Stretch between(
      Node from, Node to, Function<Node, List<Step>> steps, Predicate<Step> allowed) {
    Map<Node, Set<Node>> neighbours = new HashMap<>();
    List<Step> taken = new ArrayList<>();
    for (Node node : Reach.from(List.of(from), steps, allowed).nodes()) {
      for (Step step : steps.apply(node)) {
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
    return of(Block.of(from, to, neighbours), taken);
  }

  private static Stretch of(Set<Node> block, List<Step> taken) {
    Set<PartId> parts = new TreeSet<>();
    for (Step step : taken) {
      if (block.contains(step.from()) && block.contains(step.to())) {
        parts.add(step.in().part());
        parts.add(step.out().part());
      }
    }
    return new Stretch(block, List.copyOf(parts));
  }
}
