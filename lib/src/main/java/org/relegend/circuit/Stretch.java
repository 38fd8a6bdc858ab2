package org.relegend.circuit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.BiconnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;
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
    if (from.equals(to)) {
      return NONE;
    }
    Graph<Node, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
    List<Step> taken = new ArrayList<>();
    for (Node node : Reach.from(List.of(from), steps, allowed).nodes()) {
      for (Step step : steps.apply(node)) {
        if (allowed.test(step)) {
          graph.addVertex(node);
          graph.addVertex(step.to());
          graph.addEdge(node, step.to());
          taken.add(step);
        }
      }
    }
    if (!graph.containsVertex(to)) {
      return NONE;
    }
    graph.addEdge(from, to);
    return new BiconnectivityInspector<>(graph)
        .getBlocks(from).stream()
            .filter(block -> block.containsVertex(to))
            .findFirst()
            .map(block -> of(block.vertexSet(), taken))
            .orElse(NONE);
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
