package org.relegend.circuit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What can be reached from some nodes by the steps that were allowed.
 *
 * @param arrivals each node reached to the step that came there first, nearest nodes first; nothing
 *     for the nodes it began at
 * @param refused the steps that lead on from a reached node but weren't allowed
 */
public record ReachableNodes(Map<Node, Optional<NodeStep>> arrivals, List<NodeStep> refused) {
  public ReachableNodes {
    arrivals = Collections.unmodifiableMap(new LinkedHashMap<>(arrivals));
    refused = List.copyOf(refused);
  }

  static ReachableNodes from(
      Collection<Node> nodes, Function<Node, List<NodeStep>> steps, Predicate<NodeStep> allowed) {
    Map<Node, Optional<NodeStep>> arrivals = new LinkedHashMap<>();
    List<NodeStep> refused = new ArrayList<>();
    nodes.forEach(node -> arrivals.put(node, Optional.empty()));
    Deque<Node> open = new ArrayDeque<>(arrivals.keySet());
    while (!open.isEmpty()) {
      for (NodeStep step : steps.apply(open.remove())) {
        if (!allowed.test(step)) {
          refused.add(step);
        } else if (!arrivals.containsKey(step.to())) {
          arrivals.put(step.to(), Optional.of(step));
          open.add(step.to());
        }
      }
    }
    return new ReachableNodes(arrivals, refused);
  }

  /** The nodes reached, nearest first, those it began at among them. */
  public Set<Node> nodes() {
    return arrivals.keySet();
  }

  public boolean has(Node node) {
    return arrivals.containsKey(node);
  }

  /**
   * A shortest way to a reached node; empty where it began there.
   *
   * @throws IllegalArgumentException where the node wasn't reached
   */
  public List<NodeStep> wayTo(Node node) {
    if (!has(node)) {
      throw new IllegalArgumentException(node.subject() + " isn't reached");
    }
    Deque<NodeStep> way = new ArrayDeque<>();
    Optional<NodeStep> step = arrivals.getOrDefault(node, Optional.empty());
    while (step.isPresent()) {
      way.addFirst(step.get());
      step = arrivals.getOrDefault(step.get().from(), Optional.empty());
    }
    return List.copyOf(way);
  }
}
