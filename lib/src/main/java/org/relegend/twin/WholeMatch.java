package org.relegend.twin;

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

  static TwinAssignment of(PinGraph graph) {
    PinGraphSearch search = new PinGraphSearch(graph, PinGraphSearch.rings(graph, false));
    NeighbourhoodColours surroundings = new NeighbourhoodColours(graph, false);
    for (int round = 0;
        round < ROUNDS && anchor(search, graph, surroundings.ofElements());
        round++) {
      surroundings.grow();
    }
    search.run();
    return search.pairing();
  }

  /** False where everything is paired. */
  private static boolean anchor(PinGraphSearch search, PinGraph graph, long[] colours) {
    TwinAssignment pairing = search.pairing();
    ColourTable alike = new ColourTable(graph.elements);
    for (int e = 0; e < graph.elements; e++) {
      if (pairing.openFirst(e)) {
        alike.addFirst(colours[e], e);
      } else if (pairing.openSecond(e)) {
        alike.addSecond(colours[e], e);
      }
    }
    for (int row = 0; row < alike.rows(); row++) {
      // a hash may be the same for what isn't
      if (alike.onePair(row)
          && graph.kind[alike.first(row)] == graph.kind[alike.second(row)]
          && graph.value[alike.first(row)] == graph.value[alike.second(row)]) {
        search.anchor(alike.first(row), alike.second(row));
      }
    }
    return !alike.isEmpty();
  }
}
