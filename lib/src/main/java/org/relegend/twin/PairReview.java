package org.relegend.twin;

import static org.relegend.twin.TwinAssignment.NONE;

import java.util.HashSet;
import java.util.Set;

/** Drops pairs that more speaks against than for. */
final class PairReview {
  private final TwinAssignment pairing;
  private final PinGraph graph;

  PairReview(TwinAssignment pairing) {
    this.pairing = pairing;
    this.graph = pairing.graph;
  }

  boolean drops() {
    boolean dropped = dropNets();
    for (int i = 0; i < pairing.order.size(); i++) {
      int first = pairing.order.get(i);
      int second = pairing.twin[first];
      if (second == NONE
          || pairing.basis[first] == TwinBasis.DECLARED
          || pairing.basis[first] == TwinBasis.ONE_OF_SEVERAL) {
        continue;
      }
      TwinAssignment.Agreement agreement = pairing.agreement(first, second);
      if (2 * agreement.own() + agreement.common() <= 2 * agreement.against()) {
        pairing.drop(first);
        dropped = true;
      }
    }
    return dropped;
  }

  /** Nets whose paired pins mostly go elsewhere. */
  private boolean dropNets() {
    boolean dropped = false;
    Set<Integer> doubtful = new HashSet<>();
    for (int n = 0; n < graph.nets; n++) {
      int other = pairing.netTwin[n];
      if (other == NONE || other == n) {
        continue;
      }
      int pro = 0;
      int con = 0;
      for (int i = graph.netStart[n]; i < graph.netStart[n + 1]; i++) {
        int second = pairing.twin[graph.element[i]];
        if (second != NONE) {
          boolean holds = pairing.has(second, graph.role[graph.elementEdge[i]], other);
          pro += holds ? 1 : 0;
          con += holds ? 0 : 1;
        }
      }
      if (con > pro) {
        doubtful.add(n);
      }
    }
    for (int n : doubtful) {
      pairing.dropNet(n);
      dropped = true;
    }
    return dropped;
  }
}
