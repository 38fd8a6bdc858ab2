package org.relegend.twin;

import static org.relegend.twin.TwinAssignment.NONE;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What may be worth a try where growth has come to a stop at what is damaged. */
final class TrialPairs {
  private final TwinAssignment pairing;
  private final PinGraph graph;
  private final IntList unsettled;

  /**
   * @param unsettled firsts of pairs with pins whose nets aren't paired
   */
  TrialPairs(TwinAssignment pairing, IntList unsettled) {
    this.pairing = pairing;
    this.graph = pairing.graph;
    this.unsettled = unsettled;
  }

  /** A pair of elements or nets that may be worth a try. */
  record Venture(int first, int second, boolean ofNets) {}

  List<Venture> all() {
    Set<Venture> found = new LinkedHashSet<>();
    NetVotes votes = new NetVotes(pairing);
    for (int k = 0; k < unsettled.size(); k++) {
      int first = unsettled.get(k);
      for (int i = graph.start[first];
          pairing.twin[first] != NONE && i < graph.start[first + 1];
          i++) {
        int second = pairing.twin[first];
        int only = pairing.netTwin[graph.net[i]] == NONE ? votes.only(first, i, second) : NONE;
        if (only != NONE) {
          found.add(new Venture(graph.net[i], only, true));
        }
      }
    }
    for (int n = 0; n < graph.nets; n++) {
      int other = pairing.netTwin[n];
      if (other != NONE && other != n && graph.degree(n) <= NeighbourhoodColours.BUSY) {
        addVentures(n, other, found);
      }
    }
    addSections(found);
    addTied(found);
    return List.copyOf(found);
  }

  /** Further sections of two parts that have a pair of sections already. */
  private void addSections(Set<Venture> found) {
    for (int k = 0; k < pairing.order.size(); k++) {
      int first = pairing.order.get(k);
      int second = pairing.twin[first];
      if (second != NONE && graph.part[first] != graph.part[second]) {
        for (int a = graph.firstOfPart(first); a < graph.endOfPart(first); a++) {
          for (int b = graph.firstOfPart(second); b < graph.endOfPart(second); b++) {
            if (pairing.openFirst(a) && pairing.openSecond(b) && graph.kind[a] == graph.kind[b]) {
              found.add(new Venture(a, b, false));
            }
          }
        }
      }
    }
  }

  private void addVentures(int n, int other, Set<Venture> found) {
    for (int i = graph.netStart[n]; i < graph.netStart[n + 1]; i++) {
      int first = graph.element[i];
      int role = graph.role[graph.elementEdge[i]];
      for (int j = graph.netStart[other];
          pairing.openFirst(first) && j < graph.netStart[other + 1];
          j++) {
        int second = graph.element[j];
        if (pairing.openSecond(second)
            && graph.role[graph.elementEdge[j]] == role
            && graph.kind[second] == graph.kind[first]
            && pairing.agreement(first, second).score() > 0) {
          found.add(new Venture(first, second, false));
        }
      }
    }
  }

  /**
   * What stands on a common net in one channel as another does on a net of its own in the other,
   * where a pair has a pin on each: an input that is tied to ground here and driven there.
   */
  private void addTied(Set<Venture> found) {
    for (int k = 0; k < pairing.order.size(); k++) {
      int first = pairing.order.get(k);
      int second = pairing.twin[first];
      for (int i = graph.start[first]; second != NONE && i < graph.start[first + 1]; i++) {
        int n = graph.net[i];
        for (int j = graph.start[second]; j < graph.start[second + 1]; j++) {
          int m = graph.net[j];
          boolean here = pairing.shared(n) && pairing.netBack[m] == NONE;
          boolean there = pairing.shared(m) && pairing.netTwin[n] == NONE;
          if (n != m && graph.role[i] == graph.role[j] && (here || there)) {
            addTied(n, m, found);
          }
        }
      }
    }
  }

  private void addTied(int n, int m, Set<Venture> found) {
    for (int i = graph.netStart[n]; i < graph.netStart[n + 1]; i++) {
      int a = graph.element[i];
      for (int j = graph.netStart[m]; pairing.openFirst(a) && j < graph.netStart[m + 1]; j++) {
        int b = graph.element[j];
        if (pairing.openSecond(b)
            && graph.kind[a] == graph.kind[b]
            && graph.value[a] == graph.value[b]
            && graph.role[graph.elementEdge[i]] == graph.role[graph.elementEdge[j]]
            && lookBeside(a, n) == lookBeside(b, m)) {
          found.add(new Venture(a, b, false));
        }
      }
    }
  }

  /** What the other nets of an element look like; different by nothing where it has none. */
  private long lookBeside(int e, int n) {
    long sum = 0;
    for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
      if (graph.net[i] != n) {
        sum += Hashes.mix(graph.surroundings[graph.net[i]], graph.role[i]);
      }
    }
    return sum;
  }
}
