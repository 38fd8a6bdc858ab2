package org.relegend.twin;

import static org.relegend.twin.TwinAssignment.NONE;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Finds twins by the nets that all of their pins are on. What is alike in this has no difference
 * that the circuit could tell.
 */
final class NetSetMatch {
  private final PinGraph graph;
  private final TwinAssignment pairing;

  NetSetMatch(TwinAssignment pairing) {
    this.graph = pairing.graph;
    this.pairing = pairing;
  }

  /** What stands at one place on either side. */
  private static final class NetSides {
    private final IntList firsts = new IntList();
    private final IntList seconds = new IntList();

    void addAll(NetSides more) {
      more.firsts.addTo(firsts);
      more.seconds.addTo(seconds);
    }

    /** Divided by value. */
    Collection<NetSides> byValue(PinGraph graph) {
      Map<Long, NetSides> values = new TreeMap<>();
      for (int i = 0; i < firsts.size(); i++) {
        of(values, graph.value[firsts.get(i)]).firsts.add(firsts.get(i));
      }
      for (int i = 0; i < seconds.size(); i++) {
        of(values, graph.value[seconds.get(i)]).seconds.add(seconds.get(i));
      }
      return values.values();
    }

    private static NetSides of(Map<Long, NetSides> values, long value) {
      return values.computeIfAbsent(value, v -> new NetSides());
    }

    /** Only those that are marked or not. */
    NetSides where(
        boolean[] firstMarks, boolean firstMarked, boolean[] secondMarks, boolean secondMarked) {
      NetSides some = new NetSides();
      for (int i = 0; i < firsts.size(); i++) {
        if (firstMarks[firsts.get(i)] == firstMarked) {
          some.firsts.add(firsts.get(i));
        }
      }
      for (int i = 0; i < seconds.size(); i++) {
        if (secondMarks[seconds.get(i)] == secondMarked) {
          some.seconds.add(seconds.get(i));
        }
      }
      return some;
    }
  }

  /**
   * Pairs what is alike at the same nets: one with one, or as many as there are of each. Where
   * there are more on one side, which of them has no twin can't be told: no pair is made.
   */
  boolean pair(PairGrowth growth) {
    boolean grown = false;
    for (NetSides here : standing(true).values()) {
      grown |= take(here, growth);
    }
    return grown;
  }

  private boolean take(NetSides here, PairGrowth growth) {
    boolean grown = false;
    for (NetSides equal : here.byValue(graph)) {
      if (equal.firsts.size() == equal.seconds.size()) {
        grown |= takeEqual(equal, growth);
      }
    }
    NetSides rest = rest(here);
    // what is left alone on either side is the business of pairOtherKinds
    return rest.firsts.size() == rest.seconds.size() && rest.firsts.size() > 1
        ? takeEqual(rest, growth)
        : grown;
  }

  /** Those whose values don't tell which is which. */
  private NetSides rest(NetSides here) {
    NetSides rest = new NetSides();
    for (NetSides equal : here.byValue(graph)) {
      if (equal.firsts.size() != equal.seconds.size()) {
        rest.addAll(equal);
      }
    }
    return rest;
  }

  /** What stands at the same nets, alike but more on one side, so that it wasn't paired. */
  List<TwinAssignment.Several> surplus() {
    List<TwinAssignment.Several> surplus = new ArrayList<>();
    for (NetSides here : standing(true).values()) {
      NetSides rest = rest(here);
      if (!rest.firsts.isEmpty() && !rest.seconds.isEmpty()) {
        surplus.add(new TwinAssignment.Several(rest.firsts.toList(), rest.seconds.toList()));
      }
    }
    return surplus;
  }

  private static boolean takeEqual(NetSides here, PairGrowth growth) {
    boolean alone = here.firsts.size() == 1;
    boolean grown = false;
    for (int i = 0; i < here.firsts.size(); i++) {
      grown |=
          growth.accept(
              here.firsts.get(i),
              here.seconds.get(i),
              alone ? TwinBasis.STRUCTURE : TwinBasis.ONE_OF_SEVERAL);
    }
    if (grown && !alone) {
      growth.pairing().interchangeable(here.firsts.toList(), here.seconds.toList());
    }
    return grown;
  }

  /** Pairs what stands alone at the same nets though it is of another kind. */
  boolean pairOtherKinds(PairGrowth growth) {
    boolean grown = false;
    for (NetSides here : standing(false).values()) {
      if (here.firsts.size() == 1
          && here.seconds.size() == 1
          && graph.pins(here.firsts.get(0)) > 1) {
        grown |= growth.accept(here.firsts.get(0), here.seconds.get(0), TwinBasis.STRUCTURE);
      }
    }
    return grown;
  }

  /**
   * Pairs what fits if a net without twin is taken for the one that the other side's pins are on
   * there: an input that is tied to ground in one channel and driven in the other.
   */
  boolean pairTied(PairGrowth growth) {
    int[] known = pairing.netTwin.clone();
    int[] knownBack = pairing.netBack.clone();
    boolean[] tied = new boolean[graph.elements];
    boolean[] tiedBack = new boolean[graph.elements];
    if (!tie(known, knownBack, tied, tiedBack)) {
      return false;
    }
    int[] names = named(knownBack);
    Map<Long, NetSides> places = new HashMap<>();
    for (int e = 0; e < graph.elements; e++) {
      if (pairing.openFirst(e) && complete(e, known)) {
        places.computeIfAbsent(key(e, known, true, true), k -> new NetSides()).firsts.add(e);
      }
    }
    for (int e = 0; e < graph.elements; e++) {
      NetSides here =
          pairing.openSecond(e) && complete(e, knownBack)
              ? places.get(key(e, names, true, true))
              : null;
      if (here != null) {
        here.seconds.add(e);
      }
    }
    boolean grown = false;
    for (NetSides here : places.values()) {
      grown |= take(here.where(tied, true, tiedBack, false), growth);
      grown |= take(here.where(tied, false, tiedBack, true), growth);
    }
    return grown;
  }

  private boolean complete(int e, int[] known) {
    for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
      if (known[graph.net[i]] == NONE) {
        return false;
      }
    }
    return graph.pins(e) > 0;
  }

  /** Names for the nets of seconds: themselves, or what the net they are tied to is paired with. */
  private int[] named(int[] knownBack) {
    int[] names = new int[graph.nets];
    for (int n = 0; n < graph.nets; n++) {
      names[n] =
          pairing.netBack[n] != NONE || knownBack[n] == NONE ? n : pairing.netTwin[knownBack[n]];
    }
    return names;
  }

  /** Finds open nets all of whose paired pins have their counterparts on one known net. */
  private boolean tie(int[] known, int[] knownBack, boolean[] tied, boolean[] tiedBack) {
    boolean any = false;
    for (int n = 0; n < graph.nets; n++) {
      if (pairing.netTwin[n] == NONE) {
        int other = opposite(n, pairing.twin);
        if (other >= 0 && pairing.netBack[other] != NONE) {
          known[n] = other;
          mark(n, tied);
          any = true;
        }
      }
      if (pairing.netBack[n] == NONE) {
        int other = opposite(n, pairing.back);
        if (other >= 0 && pairing.netTwin[other] != NONE) {
          knownBack[n] = other;
          mark(n, tiedBack);
          any = true;
        }
      }
    }
    return any;
  }

  private void mark(int n, boolean[] marked) {
    for (int i = graph.netStart[n]; i < graph.netStart[n + 1]; i++) {
      marked[graph.element[i]] = true;
    }
  }

  /** The net that most counterparts of this net's paired pins are on; NONE if no clear one. */
  private int opposite(int n, int[] partner) {
    Map<Integer, Integer> votes = new HashMap<>();
    int all = 0;
    for (int i = graph.netStart[n]; i < graph.netStart[n + 1]; i++) {
      int other = partner[graph.element[i]];
      int role = graph.role[graph.elementEdge[i]];
      int on = other == NONE ? NONE : onlyNet(other, role);
      if (on != NONE) {
        votes.merge(on, 1, Integer::sum);
        all++;
      }
    }
    for (Map.Entry<Integer, Integer> vote : votes.entrySet()) {
      if (2 * vote.getValue() > all) {
        return vote.getKey();
      }
    }
    return NONE;
  }

  private int onlyNet(int e, int role) {
    int on = NONE;
    for (int j = graph.start[e]; j < graph.start[e + 1]; j++) {
      if (graph.role[j] == role) {
        if (on != NONE) {
          return NONE;
        }
        on = graph.net[j];
      }
    }
    return on;
  }

  private Map<Long, NetSides> standing(boolean byKind) {
    Map<Long, NetSides> places = new HashMap<>();
    for (int e = 0; e < graph.elements; e++) {
      if (pairing.openFirst(e) && own(e, pairing.netTwin)) {
        places
            .computeIfAbsent(key(e, pairing.netTwin, true, byKind), k -> new NetSides())
            .firsts
            .add(e);
      }
    }
    if (places.isEmpty()) {
      return places;
    }
    for (int e = 0; e < graph.elements; e++) {
      if (pairing.openSecond(e) && own(e, pairing.netBack)) {
        NetSides here = places.get(key(e, pairing.netBack, false, byKind));
        if (here != null) {
          here.seconds.add(e);
        }
      }
    }
    places.values().removeIf(here -> here.seconds.isEmpty());
    return places;
  }

  /** Whether all its nets are known, and not all are common to both sides. */
  private boolean own(int e, int[] known) {
    boolean own = false;
    for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
      int n = graph.net[i];
      if (known[n] == NONE) {
        return false;
      }
      own |= known[n] != n;
    }
    return own;
  }

  private long key(int e, int[] known, boolean first, boolean byKind) {
    long sum = 0;
    for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
      int n = graph.net[i];
      sum += Hashes.mix(first ? known[n] : n, byKind ? graph.role[i] : 0);
    }
    return byKind ? Hashes.mix(sum, graph.kind[e]) : sum;
  }
}
