package org.relegend.twin;

import static org.relegend.twin.TwinAssignment.NONE;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What growth has left open since several are alike. */
final class OpenChoices {
  /** So many alternatives a choice may have. */
  private static final int ALTERNATIVES = 4;

  private final TwinAssignment pairing;
  private final PinGraph graph;
  private final IntList unsettled;

  /**
   * @param unsettled firsts of pairs with pins whose nets aren't paired
   */
  OpenChoices(TwinAssignment pairing, IntList unsettled) {
    this.pairing = pairing;
    this.graph = pairing.graph;
    this.unsettled = unsettled;
  }

  /** One first that could have any of several seconds; NONE where nothing is open. */
  record Choice(int first, List<Integer> seconds, boolean ofNets) {
    static final Choice NOTHING = new Choice(NONE, List.of(), false);
  }

  /** The first that is found. */
  Choice open() {
    for (int k = 0; k < unsettled.size(); k++) {
      int first = unsettled.get(k);
      Choice choice = openNets(first);
      if (choice.first() != NONE) {
        return choice;
      }
    }
    for (int n = 0; n < graph.nets; n++) {
      int other = pairing.netTwin[n];
      if (other != NONE && other != n && graph.degree(n) <= NeighbourhoodColours.BUSY) {
        Choice choice = openElements(n, other);
        if (choice.first() != NONE) {
          return choice;
        }
      }
    }
    return Choice.NOTHING;
  }

  private Choice openNets(int first) {
    int second = pairing.twin[first];
    if (second == NONE) {
      return Choice.NOTHING;
    }
    NetVotes votes = new NetVotes(pairing);
    for (int i = graph.start[first]; i < graph.start[first + 1]; i++) {
      for (int j = i + 1; j < graph.start[first + 1]; j++) {
        int[] nets = votes.exchangeable(first, i, j, second);
        if (nets.length == 4) {
          return new Choice(nets[0], List.of(nets[2], nets[3]), true);
        }
      }
    }
    return Choice.NOTHING;
  }

  /** What has all its nets known and wasn't paired by them is one of too many. */
  private static boolean open(TwinAssignment.Agreement agreement) {
    return agreement.against() == 0 && agreement.open() > 0;
  }

  private Choice openElements(int n, int other) {
    for (int i = graph.netStart[n]; i < graph.netStart[n + 1]; i++) {
      int first = graph.element[i];
      if (!pairing.openFirst(first)) {
        continue;
      }
      int role = graph.role[graph.elementEdge[i]];
      Set<Integer> alike = new TreeSet<>();
      for (int j = graph.netStart[other]; j < graph.netStart[other + 1]; j++) {
        int second = graph.element[j];
        if (pairing.openSecond(second)
            && graph.role[graph.elementEdge[j]] == role
            && graph.kind[second] == graph.kind[first]
            && graph.value[second] == graph.value[first]
            && open(pairing.agreement(first, second))) {
          alike.add(second);
        }
      }
      if (alike.size() > 1 && alike.size() <= ALTERNATIVES) {
        return new Choice(first, List.copyOf(alike), false);
      }
    }
    return Choice.NOTHING;
  }

  /** Takes what needs no look ahead, since nothing follows from it; false where it isn't so. */
  boolean takePlain(Choice choice, PairGrowth growth) {
    if (choice.ofNets()) {
      return bare(choice.first())
          && choice.seconds().stream().allMatch(this::bare)
          && growth.acceptNets(choice.first(), choice.seconds().get(0));
    }
    return pairEnds(choice, growth) || sideBySide(choice.seconds()) && pairNets(choice, growth);
  }

  /** Whether only one pin is on the net, so that nothing follows from it. */
  private boolean bare(int n) {
    return graph.degree(n) == 1;
  }

  /** Pairs what hangs on a net by one end and has nothing at the other: nothing follows from it. */
  private boolean pairEnds(Choice choice, PairGrowth growth) {
    List<Integer> seconds = choice.seconds();
    if (!seconds.stream().allMatch(second -> hangs(second, pairing.netBack))) {
      return false;
    }
    Set<Integer> firsts = new TreeSet<>();
    for (int i = graph.start[choice.first()]; i < graph.start[choice.first() + 1]; i++) {
      int n = graph.net[i];
      for (int j = graph.netStart[n];
          pairing.netTwin[n] != NONE && !pairing.shared(n) && j < graph.netStart[n + 1];
          j++) {
        int e = graph.element[j];
        if (pairing.openFirst(e)
            && hangs(e, pairing.netTwin)
            && graph.kind[e] == graph.kind[choice.first()]
            && graph.value[e] == graph.value[choice.first()]
            && pairing.agreement(e, seconds.get(0)).against() == 0) {
          firsts.add(e);
        }
      }
    }
    if (firsts.size() != seconds.size() || !firsts.contains(choice.first())) {
      return false;
    }
    int next = 0;
    for (int e : firsts) {
      growth.accept(e, seconds.get(next++), TwinBasis.ONE_OF_SEVERAL);
    }
    pairing.interchangeable(List.copyOf(firsts), seconds);
    return true;
  }

  /** Whether nothing else is on any of the nets that aren't known yet. */
  private boolean hangs(int e, int[] known) {
    for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
      if (known[graph.net[i]] == NONE && !bare(graph.net[i])) {
        return false;
      }
    }
    return true;
  }

  private boolean sideBySide(List<Integer> elements) {
    return elements.stream().allMatch(e -> graph.sideBySide(elements.get(0), e));
  }

  /** The nets of what stands side by side are the same whichever is taken. */
  private boolean pairNets(Choice choice, PairGrowth growth) {
    NetVotes votes = new NetVotes(pairing);
    int second = choice.seconds().get(0);
    boolean paired = false;
    for (int i = graph.start[choice.first()]; i < graph.start[choice.first() + 1]; i++) {
      int n = graph.net[i];
      int only = pairing.netTwin[n] == NONE ? votes.only(choice.first(), i, second) : NONE;
      paired |= only != NONE && growth.acceptNets(n, only);
    }
    return paired;
  }
}
