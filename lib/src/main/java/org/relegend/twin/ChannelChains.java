package org.relegend.twin;

import static org.relegend.twin.TwinAssignment.NONE;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/**
 * Where a third channel joins the second as the second joins the first, growth goes on from pair to
 * pair of channels, and elements get a twin on either hand. This keeps the pairs of the two
 * channels that the seed is in.
 */
final class ChannelChains {
  private final TwinAssignment pairing;
  private final PinGraph graph;

  /** How many links precede the one that begins at an element. */
  private final int[] place;

  private ChannelChains(TwinAssignment pairing) {
    this.pairing = pairing;
    this.graph = pairing.graph;
    place = new int[graph.elements];
  }

  /** The firsts of the pairs that are kept, by number. */
  static boolean[] kept(TwinAssignment pairing, int seed) {
    return new ChannelChains(pairing).kept(seed);
  }

  private boolean[] kept(int seed) {
    boolean[] kept = new boolean[graph.elements];
    boolean chained = measure();
    if (!chained || seed == NONE || pairing.twin[seed] == NONE) {
      for (int e = 0; e < graph.elements; e++) {
        kept[e] = pairing.twin[e] != NONE && pairing.twin[e] != e;
      }
      return kept;
    }
    boolean[] taken = new boolean[graph.elements];
    spread(seed, kept, taken, true);
    for (int e = 0; e < graph.elements; e++) {
      int twin = pairing.twin[e];
      if (twin != NONE && twin != e && !taken[e] && !taken[twin] && apart(e, seed)) {
        keep(e, kept, taken);
      }
    }
    for (int e = 0; e < graph.elements; e++) {
      if (kept[e]) {
        spread(e, kept, taken, false);
      }
    }
    return kept;
  }

  /** Finds each link's place in its chain; false where no element has a twin on either hand. */
  private boolean measure() {
    boolean chained = false;
    Arrays.fill(place, NONE);
    for (int e = 0; e < graph.elements; e++) {
      if (pairing.twin[e] == NONE || pairing.back[e] != NONE) {
        continue;
      }
      int at = e;
      for (int k = 0; at != NONE && pairing.twin[at] != NONE; k++) {
        place[at] = k;
        chained |= k > 0;
        at = pairing.twin[at];
      }
    }
    for (int e = 0; e < graph.elements; e++) {
      if (pairing.twin[e] != NONE && pairing.twin[e] != e && place[e] == NONE) {
        place[e] = 0; // in a circle: two channels that each lead to the other
        chained = true;
      }
    }
    return chained;
  }

  /** From pair to pair over pairs of nets; with {@code strict} only to links of the same place. */
  private void spread(int from, boolean[] kept, boolean[] taken, boolean strict) {
    Deque<Integer> next = new ArrayDeque<>();
    keep(from, kept, taken);
    next.add(from);
    while (!next.isEmpty()) {
      int e = next.remove();
      for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
        int n = graph.net[i];
        if (pairing.netTwin[n] == NONE || pairing.netTwin[n] == n) {
          continue;
        }
        for (int j = graph.netStart[n]; j < graph.netStart[n + 1]; j++) {
          int other = graph.element[j];
          int twin = pairing.twin[other];
          if (twin != NONE
              && twin != other
              && !kept[other]
              && !taken[other]
              && !taken[twin]
              && (!strict || place[other] == place[from])) {
            keep(other, kept, taken);
            next.add(other);
          }
        }
      }
    }
  }

  /** Whether no net of its own leads to it, as to an input that is tied to ground. */
  private boolean apart(int e, int seed) {
    return place[e] == place[seed] && pairing.agreement(e, pairing.twin[e]).own() == 0;
  }

  private void keep(int e, boolean[] kept, boolean[] taken) {
    kept[e] = true;
    taken[e] = true;
    taken[pairing.twin[e]] = true;
  }
}
