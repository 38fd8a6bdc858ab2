package org.relegend.twin;

import static org.relegend.twin.Pairing.NONE;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What may be worth a try where growth has come to a stop at what is damaged. */
final class Ventures {
  private final Pairing pairing;
  private final PinGraph graph;
  private final IntList unsettled;

  /**
   * @param unsettled firsts of pairs with pins whose nets aren't paired
   */
  Ventures(Pairing pairing, IntList unsettled) {
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
      if (other != NONE && other != n && graph.degree(n) <= Surroundings.BUSY) {
        addVentures(n, other, found);
      }
    }
    addSections(found);
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
}
