package org.relegend.twin;

import static org.relegend.twin.TwinAssignment.NONE;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Looks once more at a finished search: growth takes what looks surest where it stands, and damage
 * can make the wrong way look so, as when two halves of a channel are built alike. Each early pair
 * is exchanged for another that could have stood there, the whole is grown anew from the seeds, and
 * the better end is kept; what ends about as well is left open.
 */
final class SearchRestarts {
  /** So many ends are grown at most. */
  private static final int TRIALS = 40;

  /** Fewer on large circuits: of all trials together no more than so many elements are seen. */
  private static final int ALL_ELEMENTS = 20_000;

  /** Ends that differ by no more than this, in pins, are taken to be as good as each other. */
  static final double EQUAL = 2;

  private final PinGraph graph;
  private final Set<Long> seen = new HashSet<>();
  private final List<PinGraphSearch> ends = new ArrayList<>();
  private PinGraphSearch best;
  private int left;

  private SearchRestarts(PinGraphSearch search) {
    this.graph = search.pairing().graph;
    this.best = search;
    left = Math.min(TRIALS, ALL_ELEMENTS / Math.max(1, graph.elements));
  }

  /** The search itself where nothing speaks against it, else the best that can be found. */
  static PinGraphSearch at(PinGraphSearch search) {
    return PairingScore.ofAll(search.pairing()).flaws() == 0
        ? search
        : new SearchRestarts(search).end();
  }

  private PinGraphSearch end() {
    see(best);
    boolean better = true;
    while (better && left > 0) {
      better = tryAround(best);
    }
    double enough = balance(best) - EQUAL;
    List<TwinAssignment> equal = new ArrayList<>(List.of(best.pairing()));
    for (PinGraphSearch end : ends) {
      if (end != best && balance(end) >= enough) {
        equal.add(end.pairing());
      }
    }
    if (equal.size() > 1) {
      PinGraphSearch.leaveOpen(best.pairing(), equal, best.again().pairing());
    }
    return best;
  }

  private static double balance(PinGraphSearch end) {
    return PairingScore.ofAll(end.pairing()).balance();
  }

  private void see(PinGraphSearch end) {
    ends.add(end);
    TwinAssignment pairing = end.pairing();
    for (int i = 0; i < pairing.order.size(); i++) {
      int first = pairing.order.get(i);
      if (pairing.twin[first] != NONE) {
        seen.add(key(first, pairing.twin[first]));
      }
    }
  }

  private static long key(int first, int second) {
    return ((long) first << 32) | second;
  }

  /** Whether another way at one of the pairs ends better. */
  private boolean tryAround(PinGraphSearch search) {
    TwinAssignment pairing = search.pairing();
    for (int i = 0; i < pairing.order.size() && left > 0; i++) {
      int first = pairing.order.get(i);
      if (pairing.twin[first] != NONE
          && pairing.basis[first] != TwinBasis.DECLARED
          && tryAt(search, first)) {
        return true;
      }
    }
    return false;
  }

  private boolean tryAt(PinGraphSearch search, int first) {
    TwinAssignment pairing = search.pairing();
    int second = pairing.twin[first];
    for (int i = graph.start[first]; i < graph.start[first + 1]; i++) {
      int n = graph.net[i];
      int other = pairing.netTwin[n];
      if (other == NONE || other == n || !pairing.has(second, graph.role[i], other)) {
        continue;
      }
      for (int e : alike(second, graph.role[i], other)) {
        if (graph.second(e) && better(search, first, e)) {
          return true;
        }
      }
      for (int e : alike(first, graph.role[i], n)) {
        if (graph.first(e) && better(search, e, second)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Others of this element's kind that stand on a net in the same role. */
  private List<Integer> alike(int e, int role, int n) {
    List<Integer> alike = new ArrayList<>();
    if (graph.degree(n) <= NeighbourhoodColours.BUSY) {
      for (int j = graph.netStart[n]; j < graph.netStart[n + 1]; j++) {
        int other = graph.element[j];
        if (other != e
            && graph.role[graph.elementEdge[j]] == role
            && graph.kind[other] == graph.kind[e]
            && !graph.sideBySide(e, other)) {
          alike.add(other);
        }
      }
    }
    return alike;
  }

  private boolean better(PinGraphSearch search, int first, int second) {
    if (left == 0 || !seen.add(key(first, second))) {
      return false;
    }
    PinGraphSearch trial = search.again();
    if (!trial.anchor(first, second)) {
      return false;
    }
    left--;
    trial.run();
    see(trial);
    if (balance(trial) > balance(best) + EQUAL) {
      best = trial;
      return true;
    }
    return false;
  }
}
