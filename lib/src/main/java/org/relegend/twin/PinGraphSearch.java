package org.relegend.twin;

import static org.relegend.twin.TwinAssignment.NONE;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The whole search over one graph: seeds, growth, a look ahead where alternatives are equal, and a
 * review that drops what the finished pairing speaks against.
 */
final class PinGraphSearch {
  /** How far the widest look goes, in nets. */
  private static final int RINGS = 2;

  private static final int REVIEWS = 3;

  /** How many choices are looked into. */
  private static final int CHOICES = 24;

  /** How many of the choices that follow are made to tell equal ends apart. */
  private static final int NEXT_CHOICES = 6;

  /** So many pairs are tried where growth has stopped. */
  private static final int VENTURES = 24;

  /** So many more pins must agree after such a try. */
  private static final double GAIN = 6;

  private final PinGraph graph;
  private final List<long[]> rings;
  private final List<Planted> planted = new ArrayList<>();

  /** Whether ties are looked into further. */
  private final boolean deep;

  private PairGrowth growth;

  /**
   * @param rings as {@link #rings} gives them; they serve any number of searches
   */
  PinGraphSearch(PinGraph graph, List<long[]> rings) {
    this(graph, List.copyOf(rings), new PairGrowth(new TwinAssignment(graph), rings), true);
  }

  private PinGraphSearch(PinGraph graph, List<long[]> rings, PairGrowth growth, boolean deep) {
    this.graph = graph;
    this.rings = rings;
    this.growth = growth;
    this.deep = deep;
  }

  /**
   * Colours of the elements, the widest radius first.
   *
   * @param sameNets whether the two sides are of one circuit
   */
  static List<long[]> rings(PinGraph graph, boolean sameNets) {
    List<long[]> rings = new ArrayList<>();
    NeighbourhoodColours surroundings = new NeighbourhoodColours(graph, sameNets);
    for (int r = 0; r < RINGS; r++) {
      surroundings.grow();
      rings.add(0, surroundings.ofElements());
    }
    return rings;
  }

  TwinAssignment pairing() {
    return growth.pairing();
  }

  /** What a search was begun with. */
  private record Planted(int first, int second, boolean ofNets) {}

  boolean seed(int first, int second) {
    planted.add(new Planted(first, second, false));
    return growth.accept(first, second, TwinBasis.DECLARED);
  }

  boolean seedNets(int first, int second) {
    planted.add(new Planted(first, second, true));
    return growth.acceptNets(first, second);
  }

  /** The same seeds, not grown yet. */
  PinGraphSearch again() {
    PinGraphSearch again = new PinGraphSearch(graph, rings);
    for (Planted seed : planted) {
      if (seed.ofNets()) {
        again.seedNets(seed.first(), seed.second());
      } else {
        again.seed(seed.first(), seed.second());
      }
    }
    return again;
  }

  boolean anchor(int first, int second) {
    return growth.accept(first, second, TwinBasis.STRUCTURE);
  }

  /** The first pair with a net of its own, which tells the channels; NONE without any pair. */
  int anchor() {
    return anchor(pairing());
  }

  private static int anchor(TwinAssignment pairing) {
    int found = NONE;
    for (int i = 0; i < pairing.order.size(); i++) {
      int first = pairing.order.get(i);
      if (pairing.twin[first] != NONE) {
        if (pairing.agreement(first, pairing.twin[first]).own() > 0) {
          return first;
        }
        found = found == NONE ? first : found;
      }
    }
    return found;
  }

  /** Grows, reviews, and looks into what is left open, until nothing changes. */
  void run() {
    grow();
    for (int choice = 0; choice < CHOICES && (choose() || venture()); choice++) {
      growth.grow();
    }
  }

  private void grow() {
    for (int review = 0; review < REVIEWS; review++) {
      growth.grow();
      if (!new PairReview(pairing()).drops()) {
        break;
      }
      growth = new PairGrowth(pairing(), rings);
    }
  }

  /**
   * Where growth has come to a stop at what is damaged: tries pairs with something against them,
   * and takes the one from which clearly more follows than from any other.
   */
  private boolean venture() {
    PairingScore now = merit();
    PairingScore best = now;
    List<TwinAssignment> ends = new ArrayList<>();
    int tried = 0;
    for (TrialPairs.Venture venture : new TrialPairs(pairing(), growth.unsettled).all()) {
      if (tried++ == VENTURES) {
        break;
      }
      PairGrowth trial = new PairGrowth(pairing().copy(), rings);
      boolean begun =
          venture.ofNets()
              ? trial.acceptNets(venture.first(), venture.second())
              : trial.accept(venture.first(), venture.second(), TwinBasis.STRUCTURE);
      if (!begun) {
        continue;
      }
      trial.grow();
      PairingScore merit = merit(trial.pairing());
      double gain = merit.balance() - now.balance();
      if (gain >= GAIN && merit.balance() > best.balance() + 0.5) {
        best = merit;
        ends.clear();
        ends.add(trial.pairing());
      }
    }
    if (ends.isEmpty()) {
      return false;
    }
    growth = new PairGrowth(ends.get(0), rings);
    return true;
  }

  /** Decides one open choice by what would follow from it; false where none is open. */
  private boolean choose() {
    OpenChoices choices = new OpenChoices(pairing(), growth.unsettled);
    OpenChoices.Choice choice = choices.open();
    if (choice.first() == NONE) {
      return false;
    }
    if (choices.takePlain(choice, growth)) {
      return true;
    }
    List<TwinAssignment> ends = new ArrayList<>();
    PairingScore best = new PairingScore(0, 0, 1);
    for (int second : choice.seconds()) {
      PairGrowth trial = new PairGrowth(pairing().copy(), rings);
      if (choice.ofNets()
          ? !trial.acceptNets(choice.first(), second)
          : !trial.accept(choice.first(), second, TwinBasis.STRUCTURE)) {
        continue;
      }
      trial.grow();
      PairingScore merit = merit(trial.pairing());
      if (ends.isEmpty() || merit.compareTo(best) > 0) {
        ends.clear();
        best = merit;
      }
      if (merit.compareTo(best) == 0) {
        ends.add(trial.pairing());
      }
    }
    if (ends.isEmpty()) {
      return false;
    }
    if (ends.size() > 1 && deep) {
      ends = deepest(ends);
    }
    TwinAssignment taken = ends.get(0);
    leaveOpen(taken, ends, pairing());
    growth = new PairGrowth(taken, rings);
    return true;
  }

  /** Of equally good ends those that are so too when the next choices are made in each. */
  private List<TwinAssignment> deepest(List<TwinAssignment> ends) {
    List<Double> worth = new ArrayList<>();
    for (TwinAssignment end : ends) {
      PinGraphSearch further =
          new PinGraphSearch(graph, rings, new PairGrowth(end.copy(), rings), false);
      for (int i = 0; i < NEXT_CHOICES && further.choose(); i++) {
        further.growth.grow();
      }
      worth.add(further.merit().balance());
    }
    double enough = Collections.max(worth) - SearchRestarts.EQUAL;
    List<TwinAssignment> deepest = new ArrayList<>();
    for (int i = 0; i < ends.size(); i++) {
      if (worth.get(i) >= enough) {
        deepest.add(ends.get(i));
      }
    }
    return deepest;
  }

  /** Marks as one of several what these equally good ends don't agree on. */
  static void leaveOpen(TwinAssignment taken, List<TwinAssignment> ends, TwinAssignment before) {
    List<Integer> open = new ArrayList<>();
    List<TwinAssignment.Several> groups = new ArrayList<>();
    for (int e = 0; e < taken.twin.length; e++) {
      if (taken.twin[e] != NONE && before.twin[e] == NONE) {
        Set<Integer> firsts = new TreeSet<>();
        Set<Integer> seconds = new TreeSet<>();
        for (TwinAssignment end : ends) {
          seconds.addAll(end.seconds(e));
        }
        for (TwinAssignment end : ends) {
          seconds.forEach(second -> firsts.addAll(end.firsts(second)));
        }
        if (seconds.size() > 1) {
          open.add(e);
          groups.add(new TwinAssignment.Several(List.copyOf(firsts), List.copyOf(seconds)));
        }
      }
    }
    for (int i = 0; i < open.size(); i++) {
      taken.basis[open.get(i)] = TwinBasis.ONE_OF_SEVERAL;
      taken.several.put(open.get(i), groups.get(i));
    }
  }

  /** How well the two channels that the first seed is in agree. */
  PairingScore merit() {
    return merit(pairing());
  }

  private PairingScore merit(TwinAssignment pairing) {
    return PairingScore.of(pairing, anchor(pairing));
  }

  /** How many of this search's pairs another one has too, 0 to 1. */
  double sharedWith(PinGraphSearch other) {
    boolean[] kept = ChannelChains.kept(pairing(), anchor());
    int pairs = 0;
    int same = 0;
    for (int first = 0; first < kept.length; first++) {
      if (kept[first]) {
        pairs++;
        same += other.pairing().twin[first] == pairing().twin[first] ? 1 : 0;
      }
    }
    return pairs == 0 ? 0 : (double) same / pairs;
  }
}
