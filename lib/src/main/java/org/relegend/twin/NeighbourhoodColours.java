package org.relegend.twin;

/**
 * Colours that tell what lies around each element: a colour of radius r sums up kinds, values and
 * roles within r nets (colour refinement with hashes in the place of names). Busy nets, as
 * supplies, are known by themselves and not by what hangs on them, else everything would be near to
 * everything.
 */
final class NeighbourhoodColours {
  /** Nets of more pins count as busy. */
  static final int BUSY = 24;

  private final PinGraph graph;
  private final boolean sameNets;
  private long[] elements;
  private long[] nets;

  /**
   * @param sameNets whether both sides share their busy nets, as the channels of one board do
   */
  NeighbourhoodColours(PinGraph graph, boolean sameNets) {
    this.graph = graph;
    this.sameNets = sameNets;
    elements = new long[graph.elements];
    nets = new long[graph.nets];
    for (int e = 0; e < graph.elements; e++) {
      elements[e] = Hashes.mix(graph.kind[e], graph.value[e]);
    }
    spread();
  }

  /** The colours of the present radius, not to be written to. */
  long[] ofElements() {
    return elements;
  }

  long[] ofNets() {
    return nets;
  }

  /** One net further; the earlier arrays stay as they are. */
  void grow() {
    long[] wider = new long[graph.elements];
    for (int e = 0; e < graph.elements; e++) {
      long sum = 0;
      for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
        sum += Hashes.mix(nets[graph.net[i]], graph.role[i]);
      }
      wider[e] = Hashes.mix(elements[e], sum);
    }
    elements = wider;
    spread();
  }

  private void spread() {
    long[] wider = new long[graph.nets];
    for (int n = 0; n < graph.nets; n++) {
      if (graph.degree(n) > BUSY) {
        wider[n] = sameNets ? Hashes.mix(n, 7) : 7;
        continue;
      }
      long sum = 0;
      for (int i = graph.netStart[n]; i < graph.netStart[n + 1]; i++) {
        sum += Hashes.mix(elements[graph.element[i]], graph.role[graph.elementEdge[i]]);
      }
      wider[n] = Hashes.mix(sum);
    }
    nets = wider;
  }
}
