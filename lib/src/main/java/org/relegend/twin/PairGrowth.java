package org.relegend.twin;

import static org.relegend.twin.TwinAssignment.NONE;

import java.util.List;

/**
 * Grows a pairing from what is paired already: at each pair of nets, what stands there once on both
 * sides is taken, then what becomes single through it. What looks alike to the widest radius goes
 * first; only when nothing is left that fits without flaw are differing connections, then values,
 * then kinds let pass, the surest first. Equal alternatives are left open.
 */
final class PairGrowth {
  private final PinGraph graph;
  private final TwinAssignment pairing;
  private final List<long[]> rings;
  private final NetVotes votes;
  private final IntList queue = new IntList();
  private final boolean[] queued;

  /** Nets that had open elements on both sides when last looked at. */
  private final IntList later = new IntList();

  private final boolean[] late;

  /** Firsts of pairs with pins whose nets aren't paired. */
  final IntList unsettled = new IntList();

  private final SignatureIndex firsts = new SignatureIndex();
  private final SignatureIndex seconds = new SignatureIndex();

  /**
   * @param rings colours of the elements, the widest radius first
   */
  PairGrowth(TwinAssignment pairing, List<long[]> rings) {
    this.graph = pairing.graph;
    this.pairing = pairing;
    this.rings = rings;
    this.votes = new NetVotes(pairing);
    queued = new boolean[graph.nets];
    late = new boolean[graph.nets];
    for (int n = 0; n < graph.nets; n++) {
      if (pairing.netTwin[n] != NONE) {
        enqueue(n);
      }
    }
    for (int i = 0; i < pairing.order.size(); i++) {
      int first = pairing.order.get(i);
      if (pairing.twin[first] != NONE) {
        unsettled.add(first);
      }
    }
  }

  TwinAssignment pairing() {
    return pairing;
  }

  /** Pairs these two and what follows from it at once; false where one of them is taken. */
  boolean accept(int first, int second, TwinBasis basis) {
    if (!pairing.openFirst(first) || !pairing.openSecond(second)) {
      return false;
    }
    pairing.put(first, second, basis);
    proposeNets(first);
    for (int i = graph.start[first]; i < graph.start[first + 1]; i++) {
      enqueue(graph.net[i]);
    }
    return true;
  }

  boolean acceptNets(int first, int second) {
    if (pairing.netTwin[first] != NONE
        || pairing.netBack[second] != NONE
        || (graph.netSide[first] & PinGraph.FIRST) == 0
        || (graph.netSide[second] & PinGraph.SECOND) == 0
        || first != second && bridged(first, second)) {
      return false;
    }
    pairing.putNets(first, second);
    enqueue(first);
    if (graph.degree(first) <= NeighbourhoodColours.BUSY) {
      for (int i = graph.netStart[first]; i < graph.netStart[first + 1]; i++) {
        touch(graph.element[i]);
      }
    }
    return true;
  }

  /**
   * Whether several elements stand between the two, as between a positive and a negative supply.
   */
  private boolean bridged(int first, int second) {
    int bridges = 0;
    for (int i = graph.netStart[first]; i < graph.netStart[first + 1]; i++) {
      int e = graph.element[i];
      for (int j = graph.start[e]; j < graph.start[e + 1]; j++) {
        bridges += graph.net[j] == second ? 1 : 0;
      }
    }
    return bridges > 1;
  }

  /** An element of which one more net is known. */
  private void touch(int e) {
    if (pairing.twin[e] != NONE) {
      proposeNets(e);
    } else {
      for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
        enqueue(graph.net[i]);
      }
    }
  }

  private void enqueue(int n) {
    int other = pairing.netTwin[n];
    if (other != NONE && other != n && !queued[n]) {
      queued[n] = true;
      queue.add(n);
    }
  }

  /** Pairs the nets that the pins of a pair leave no choice for and that look alike. */
  private void proposeNets(int first) {
    int second = pairing.twin[first];
    boolean settled = true;
    for (int i = graph.start[first]; i < graph.start[first + 1]; i++) {
      int n = graph.net[i];
      if (pairing.netTwin[n] != NONE) {
        continue;
      }
      if (pairing.has(second, graph.role[i], n)) {
        acceptNets(n, n);
        continue;
      }
      int only = votes.only(first, i, second);
      if (only == NONE
          || graph.surroundings[n] != graph.surroundings[only]
          || !acceptNets(n, only)) {
        settled = false;
      }
    }
    if (!settled) {
      unsettled.add(first);
    }
  }

  /** Until nothing more can be told. */
  void grow() {
    boolean grown = true;
    while (grown) {
      drainQueue();
      grown =
          votes.takeSurest(this)
              || byScore(true)
              || byScore(false)
              || new NetSetMatch(pairing).pair(this)
              || new NetSetMatch(pairing).pairOtherKinds(this)
              || new NetSetMatch(pairing).pairTied(this);
    }
  }

  private void drainQueue() {
    do {
      while (!queue.isEmpty()) {
        int n = queue.removeLast();
        queued[n] = false;
        boolean busy = graph.degree(n) > NeighbourhoodColours.BUSY;
        if (!busy) {
          for (long[] ring : rings) {
            matchAt(n, ring);
          }
        }
        if (!late[n] && gather(n)) {
          late[n] = true;
          later.add(n);
        }
      }
    } while (settleLater());
  }

  /** What is single at its net without a look at what lies around. */
  private boolean settleLater() {
    boolean grown = false;
    int kept = 0;
    int count = later.size();
    IntList again = new IntList();
    for (int i = 0; i < count; i++) {
      int n = later.get(i);
      grown |= matchAt(n, NO_RING);
      if (gather(n)) {
        again.add(n);
        kept++;
      } else {
        late[n] = false;
      }
    }
    later.clear();
    for (int i = 0; i < kept; i++) {
      later.add(again.get(i));
    }
    return grown;
  }

  private static final long[] NO_RING = new long[0];

  /** Collects the open elements on a pair of nets; false where one side has none. */
  private boolean gather(int n) {
    int other = pairing.netTwin[n];
    firsts.clear();
    seconds.clear();
    if (other == NONE || other == n) {
      return false;
    }
    for (int i = graph.netStart[n]; i < graph.netStart[n + 1]; i++) {
      if (pairing.openFirst(graph.element[i])) {
        firsts.add(graph.element[i]);
      }
    }
    if (firsts.isEmpty()) {
      return false;
    }
    for (int i = graph.netStart[other]; i < graph.netStart[other + 1]; i++) {
      if (pairing.openSecond(graph.element[i])) {
        seconds.add(graph.element[i]);
      }
    }
    return !seconds.isEmpty();
  }

  /** Pairs whatever has its signature alone on both sides. */
  private boolean matchAt(int n, long[] ring) {
    if (!gather(n)) {
      return false;
    }
    firsts.sign(e -> signature(e, ring, pairing.netTwin, true));
    seconds.sign(e -> signature(e, ring, pairing.netBack, false));
    boolean grown = false;
    int f = 0;
    int s = 0;
    while (f < firsts.size() && s < seconds.size()) {
      int order = Long.compare(firsts.signature(f), seconds.signature(s));
      int nextF = firsts.runEnd(f);
      int nextS = seconds.runEnd(s);
      if (order == 0
          && nextF - f == 1
          && nextS - s == 1
          && fits(firsts.element(f), seconds.element(s))) {
        grown |= accept(firsts.element(f), seconds.element(s), basis(n, firsts.element(f)));
      }
      f = order <= 0 ? nextF : f;
      s = order >= 0 ? nextS : s;
    }
    return grown;
  }

  /** Holds what the signature said, which is a hash and may say it of two that aren't alike. */
  private boolean fits(int first, int second) {
    return alike(first, second, true) && pairing.agreement(first, second).against() == 0;
  }

  /** What an element is and to which known nets its pins go, the same for both of a pair. */
  private long signature(int e, long[] ring, int[] known, boolean first) {
    long sum = 0;
    for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
      int n = graph.net[i];
      int name = known[n] == NONE ? NONE : first ? known[n] : n;
      sum += Hashes.mix(name, graph.role[i]);
    }
    return Hashes.mix(sum + (ring.length == 0 ? 0 : ring[e]), graph.kind[e] ^ graph.value[e]);
  }

  /** Whether the value was needed: another of the kind stands there in the same role. */
  private TwinBasis basis(int n, int e) {
    for (int i = graph.netStart[n]; i < graph.netStart[n + 1]; i++) {
      int other = graph.element[i];
      if (other != e
          && graph.kind[other] == graph.kind[e]
          && graph.value[other] != graph.value[e]
          && pairing.has(e, graph.role[graph.elementEdge[i]], n)) {
        return TwinBasis.VALUE;
      }
    }
    return TwinBasis.STRUCTURE;
  }

  /** Pairs that have something against them, each the best for both by a clear step. */
  private boolean byScore(boolean equalValues) {
    boolean grown = false;
    for (int i = 0; i < later.size(); i++) {
      int n = later.get(i);
      if (graph.degree(n) > NeighbourhoodColours.BUSY || !gather(n)) {
        continue;
      }
      int[] here = firsts.elements();
      for (int first : here) {
        grown |= pairing.openFirst(first) && byScore(first, equalValues);
      }
    }
    return grown;
  }

  private boolean byScore(int first, boolean equalValues) {
    Best best = new Best();
    for (int i = graph.start[first]; i < graph.start[first + 1]; i++) {
      int other = pairing.netTwin[graph.net[i]];
      if (other == NONE
          || other == graph.net[i]
          || graph.degree(other) > NeighbourhoodColours.BUSY) {
        continue;
      }
      for (int j = graph.netStart[other]; j < graph.netStart[other + 1]; j++) {
        int second = graph.element[j];
        if (graph.role[graph.elementEdge[j]] == graph.role[i]
            && pairing.openSecond(second)
            && alike(first, second, equalValues)) {
          best.see(second, pairing.agreement(first, second).score());
        }
      }
    }
    if (!best.clear() || !enough(first, best.element, equalValues)) {
      return false;
    }
    Best reverse = new Best();
    int second = best.element;
    for (int i = graph.start[second]; i < graph.start[second + 1]; i++) {
      int other = pairing.netBack[graph.net[i]];
      if (other == NONE
          || other == graph.net[i]
          || graph.degree(other) > NeighbourhoodColours.BUSY) {
        continue;
      }
      for (int j = graph.netStart[other]; j < graph.netStart[other + 1]; j++) {
        int back = graph.element[j];
        if (graph.role[graph.elementEdge[j]] == graph.role[i]
            && pairing.openFirst(back)
            && alike(back, second, equalValues)) {
          reverse.see(back, pairing.agreement(back, second).score());
        }
      }
    }
    return reverse.clear()
        && reverse.element == first
        && accept(first, second, TwinBasis.STRUCTURE);
  }

  private boolean alike(int first, int second, boolean equalValues) {
    return graph.kind[first] == graph.kind[second]
        && (!equalValues || graph.value[first] == graph.value[second]);
  }

  private boolean enough(int first, int second, boolean equalValues) {
    TwinAssignment.Agreement agreement = pairing.agreement(first, second);
    int pro = 2 * agreement.own() + agreement.common();
    return equalValues
        ? pro > 2 * agreement.against()
        : pro > 3 * agreement.against() && (pro > 2 || agreement.open() == 0);
  }

  /** The best of several, and whether it is so by a clear step. */
  private static final class Best {
    private int element = NONE;
    private int score = Integer.MIN_VALUE;
    private int second = Integer.MIN_VALUE;

    void see(int candidate, int itsScore) {
      if (candidate == element) {
        return;
      }
      if (itsScore > score) {
        second = score;
        score = itsScore;
        element = candidate;
      } else {
        second = Math.max(second, itsScore);
      }
    }

    boolean clear() {
      return element != NONE && score > second;
    }
  }
}
