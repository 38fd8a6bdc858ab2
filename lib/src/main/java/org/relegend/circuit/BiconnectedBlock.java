package org.relegend.circuit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The block of a graph that one edge belongs to: all vertices on circles through it (Hopcroft and
 * Tarjan 1973, depth-first search with low points). Keeps its own stack, since a board's circuit is
 * searched to depths of tens of thousands; the graph library's search calls itself that deep.
 */
final class BiconnectedBlock<V> {
  /** A vertex under search. */
  private static final class Visit<V> {
    private final V vertex;
    private final V parent;
    private final int order;
    private final Iterator<V> rest;
    private int low;

    Visit(V vertex, V parent, int order, Iterator<V> rest) {
      this.vertex = vertex;
      this.parent = parent;
      this.order = order;
      this.low = order;
      this.rest = rest;
    }
  }

  private final Map<V, Set<V>> neighbours;
  private final Map<V, Integer> orders = new HashMap<>();
  private final Deque<V> unassigned = new ArrayDeque<>();
  private final Deque<Visit<V>> visits = new ArrayDeque<>();

  private BiconnectedBlock(Map<V, Set<V>> neighbours) {
    this.neighbours = neighbours;
  }

  /**
   * The vertices of the block that the edge from a to b would be in, were there one.
   *
   * @param neighbours both ways: each of two neighbours has the other
   */
  static <V> Set<V> of(V a, V b, Map<V, Set<V>> neighbours) {
    return new BiconnectedBlock<>(neighbours).search(a, b);
  }

  /** From b, as if it were come to from a: what is left over when the search ends is the block. */
  private Set<V> search(V a, V b) {
    orders.put(a, 0);
    enter(b, a);
    while (!visits.isEmpty()) {
      Visit<V> visit = visits.element();
      if (visit.rest.hasNext()) {
        V next = visit.rest.next();
        Integer order = orders.get(next);
        if (order == null) {
          enter(next, visit.vertex);
        } else if (!next.equals(visit.parent)) {
          visit.low = Math.min(visit.low, order);
        }
      } else {
        visits.remove();
        leave(visit);
      }
    }
    Set<V> block = new LinkedHashSet<>(List.of(a));
    block.addAll(unassigned);
    return block;
  }

  private void enter(V vertex, V parent) {
    Set<V> next = neighbours.getOrDefault(vertex, Set.of());
    orders.put(vertex, orders.size());
    unassigned.push(vertex);
    visits.push(new Visit<>(vertex, parent, orders.size() - 1, new ArrayList<>(next).iterator()));
  }

  /** Where nothing below a vertex leads past its parent, what hangs there is a block of its own. */
  private void leave(Visit<V> visit) {
    Visit<V> parent = visits.peek();
    if (parent == null) {
      return;
    }
    parent.low = Math.min(parent.low, visit.low);
    if (visit.low >= parent.order) {
      V popped;
      do {
        popped = unassigned.pop();
      } while (!popped.equals(visit.vertex));
    }
  }
}
