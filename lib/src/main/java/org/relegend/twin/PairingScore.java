package org.relegend.twin;

import static org.relegend.twin.TwinAssignment.NONE;

/**
 * The worth of a pairing.
 *
 * @param pro pins that agree; those on common nets count a quarter
 * @param flaws pins that don't, and elements of unlike value or kind
 */
record PairingScore(int pairs, double pro, double flaws) implements Comparable<PairingScore> {
  private static final int MOST_LEFT_OVER = 6;

  /** So many agreeing pins make up for a flaw. */
  private static final double FLAW = 3;

  /** How well the two channels that this pair's first is in agree. */
  static PairingScore of(TwinAssignment pairing, int anchor) {
    return of(pairing, ChannelChains.kept(pairing, anchor), false);
  }

  /**
   * How well all pairs agree, also those of further channels; to compare ends of one search. A pair
   * counts no less than none: an input that is tied in one channel is paired against its nets.
   */
  static PairingScore ofAll(TwinAssignment pairing) {
    return of(pairing, ChannelChains.kept(pairing, NONE), true);
  }

  private static PairingScore of(TwinAssignment pairing, boolean[] kept, boolean noneBelowZero) {
    PinGraph graph = pairing.graph;
    double pro = 0;
    double flaws = 0;
    int pairs = 0;
    boolean[] done = new boolean[graph.nets];
    for (int first = 0; first < kept.length; first++) {
      if (kept[first]) {
        int second = pairing.twin[first];
        TwinAssignment.Agreement agreement = pairing.agreement(first, second);
        double agrees = agreement.own() + 0.25 * agreement.common();
        double flawed = agreement.against();
        flawed += graph.value[first] == graph.value[second] ? 0 : 1;
        flawed += graph.kind[first] == graph.kind[second] ? 0 : 1;
        pro += agrees;
        flaws += noneBelowZero ? Math.min(flawed, agrees / FLAW) : flawed;
        flaws += leftOver(pairing, first, done);
        pairs++;
      }
    }
    return new PairingScore(pairs, pro, flaws);
  }

  /** A third of a flaw for each pin that one of two paired nets has more than the other. */
  private static double leftOver(TwinAssignment pairing, int first, boolean[] done) {
    PinGraph graph = pairing.graph;
    double flaws = 0;
    for (int i = graph.start[first]; i < graph.start[first + 1]; i++) {
      int n = graph.net[i];
      int other = pairing.netTwin[n];
      if (other != NONE && other != n && !done[n]) {
        done[n] = true;
        flaws += Math.min(MOST_LEFT_OVER, Math.abs(graph.degree(n) - graph.degree(other))) / 3.0;
      }
    }
    return flaws;
  }

  /** The share that agrees, 0 to 1. */
  double quality() {
    return pro / (pro + 1.5 * flaws + 0.01);
  }

  double balance() {
    return pro - FLAW * flaws;
  }

  /** By how much agrees, flaws deducted. */
  @Override
  public int compareTo(PairingScore other) {
    return Double.compare(balance(), other.balance());
  }
}
