package org.relegend.twin;

import java.util.HashMap;
import java.util.Map;

/**
 * Pairs two circuits that are given side by side, without a seed: what looks like nothing else on
 * its own side and like just one on the other is an anchor, at the smallest radius at which it does
 * so, and the rest grows from there. Where nothing is single, as in a ring of equal parts, nothing
 * is paired.
 */
final class WholeMatch {
  /** In circuits of any size nearly all that can be told apart is so after a few nets. */
  private static final int ROUNDS = 6;

  private WholeMatch() {}

  /** The elements of one colour on each side: one of them, and how many there are. */
  private static final class Alike {
    private int first;
    private int firsts;
    private int second;
    private int seconds;
  }

  static Pairing of(PinGraph graph) {
    Search search = new Search(graph, Search.rings(graph, false));
    Surroundings surroundings = new Surroundings(graph, false);
    for (int round = 0;
        round < ROUNDS && anchor(search, graph, surroundings.ofElements());
        round++) {
      surroundings.grow();
    }
    search.run();
    return search.pairing();
  }

  /** False where everything is paired. */
  private static boolean anchor(Search search, PinGraph graph, long[] colours) {
    Map<Long, Alike> classes = new HashMap<>();
    Pairing pairing = search.pairing();
    for (int e = 0; e < graph.elements; e++) {
      boolean first = pairing.openFirst(e);
      if (first || pairing.openSecond(e)) {
        Alike alike = classes.computeIfAbsent(colours[e], colour -> new Alike());
        if (first) {
          alike.first = e;
          alike.firsts++;
        } else {
          alike.second = e;
          alike.seconds++;
        }
      }
    }
    for (Alike alike : classes.values()) {
      // a hash may be the same for what isn't
      if (alike.firsts == 1
          && alike.seconds == 1
          && graph.kind[alike.first] == graph.kind[alike.second]
          && graph.value[alike.first] == graph.value[alike.second]) {
        search.anchor(alike.first, alike.second);
      }
    }
    return !classes.isEmpty();
  }
}
