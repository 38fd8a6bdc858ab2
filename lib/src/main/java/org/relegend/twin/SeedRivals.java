package org.relegend.twin;

import static org.relegend.twin.TwinAssignment.NONE;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.relegend.map.Subject;

/**
 * What speaks against seeds: each is grown by itself, then set against what another partner would
 * give, and against the other seeds.
 */
final class SeedRivals {
  /** So many seeds are looked into one by one; more would take time and hardly tell more. */
  private static final int LOOKED_INTO = 12;

  /** So many other partners are tried for either side of a seed. */
  private static final int RIVALS = 6;

  /** On larger circuits fewer, since each try grows a whole channel. */
  private static final int LARGE = 5000;

  /** A channel of so many pairs is believed on that count. */
  private static final double MANY = 8;

  /** By so much of quality a rival must be better, 1 being all. */
  private static final double CLEARLY = 0.06;

  /** By so many pins a rival must be better that leads to most of the same pairs. */
  private static final double SAME_PARTS = 4;

  private final TwinSearch twins;
  private final PinGraph graph;
  private final List<SeedContradiction> contradictions = new ArrayList<>();
  private final Set<TwinSeed> refused = new HashSet<>();
  private final List<PinGraphSearch> grown = new ArrayList<>();

  /**
   * @param own how many of the seeds, from the first, were given for this search
   */
  SeedRivals(TwinSearch twins, List<TwinSeed> seeds, int own) {
    this.twins = twins;
    this.graph = twins.graph();
    int count = Math.min(seeds.size(), Math.max(1, Math.min(LOOKED_INTO, seeds.size())));
    for (int i = 0; i < count; i++) {
      grown.add(i < own ? SearchRestarts.at(alone(seeds.get(i))) : alone(seeds.get(i)));
    }
    for (int i = 0; i < count; i++) {
      alone(seeds.get(i), grown.get(i), i < Math.max(own, 1));
    }
    for (int i = 0; i < seeds.size(); i++) {
      for (int j = 0; j < Math.min(i, count); j++) {
        together(seeds, i, j);
      }
    }
  }

  /** What follows from the first seed alone. */
  PinGraphSearch fromFirst() {
    return grown.get(0);
  }

  List<SeedContradiction> contradictions() {
    return contradictions;
  }

  /** Seeds that contradict themselves or an earlier seed. */
  Set<TwinSeed> refused() {
    return refused;
  }

  private PinGraphSearch alone(TwinSeed seed) {
    PinGraphSearch search = twins.search();
    twins.plant(search, seed);
    search.run();
    return search;
  }

  private void alone(TwinSeed seed, PinGraphSearch grown, boolean withRivals) {
    if (seed.a() instanceof Subject.OfNet) {
      return;
    }
    List<Integer> firsts = twins.elements(seed.a());
    List<Integer> seconds = twins.elements(seed.b());
    if (firsts.stream().noneMatch(a -> seconds.stream().anyMatch(b -> sameKind(a, b)))) {
      contradicts(List.of(seed), "they are of different kinds");
      return;
    }
    if (withRivals && firsts.size() == 1 && seconds.size() == 1) {
      rival(seed, firsts.get(0), seconds.get(0), grown);
    }
  }

  private boolean sameKind(int a, int b) {
    return graph.kind[a] == graph.kind[b];
  }

  private void contradicts(List<TwinSeed> seeds, String reason) {
    contradictions.add(new SeedContradiction(seeds, reason));
    refused.add(seeds.get(seeds.size() - 1));
  }

  /** Whether another partner for one of the two gives a channel that agrees clearly better. */
  private void rival(TwinSeed seed, int a, int b, PinGraphSearch grown) {
    PairingScore own = grown.merit();
    int most = graph.elements > LARGE ? 3 : RIVALS;
    int bestFirst = NONE;
    int bestSecond = NONE;
    PairingScore best = own;
    for (boolean forward : new boolean[] {true, false}) {
      for (int other : alike(forward ? a : b, forward ? b : a, most)) {
        PinGraphSearch trial = twins.search();
        if (trial.seed(forward ? a : other, forward ? other : b)) {
          trial.run();
          PairingScore merit = trial.merit();
          if (beats(trial, grown) && (bestFirst == NONE || merit.compareTo(best) > 0)) {
            best = merit;
            bestFirst = forward ? a : other;
            bestSecond = forward ? other : b;
          }
        }
      }
    }
    if (bestFirst != NONE) {
      contradicts(
          List.of(seed),
          "%s fits %s much better: more pins around agree"
              .formatted(
                  twins.name(graph.subjects.get(bestFirst)),
                  twins.name(graph.subjects.get(bestSecond))));
    }
  }

  /**
   * Clearly better, not just longer: a third channel may have more neighbours. Where most pairs are
   * the same, as when halves of a balanced stage are exchanged, every flaw counts.
   */
  private static boolean beats(PinGraphSearch rival, PinGraphSearch own) {
    PairingScore his = rival.merit();
    PairingScore mine = own.merit();
    if (2 * his.pairs() < mine.pairs() || his.quality() < mine.quality()) {
      return false;
    }
    return his.quality() > mine.quality() + CLEARLY
        || mine.pairs() < MANY && his.pairs() >= 3 * mine.pairs()
        || his.balance() > mine.balance() + SAME_PARTS && own.sharedWith(rival) > 0.5;
  }

  /** Others than these two that could be the partner of one, the most alike first. */
  private List<Integer> alike(int one, int partner, int most) {
    List<List<Integer>> byRing = new ArrayList<>();
    for (int r = 0; r <= twins.rings().size() + 1; r++) {
      byRing.add(new ArrayList<>());
    }
    for (int e = 0; e < graph.elements; e++) {
      if (e != one && e != partner && sameKind(e, one)) {
        int far = 0;
        while (far < twins.rings().size()
            && twins.rings().get(far)[e] != twins.rings().get(far)[one]) {
          far++;
        }
        far += far == twins.rings().size() && graph.value[e] != graph.value[one] ? 1 : 0;
        byRing.get(far).add(e);
      }
    }
    return byRing.stream().flatMap(List::stream).limit(most).toList();
  }

  private void together(List<TwinSeed> seeds, int i, int j) {
    TwinSeed later = seeds.get(i);
    TwinSeed earlier = seeds.get(j);
    if (refused.contains(later) || refused.contains(earlier)) {
      return;
    }
    TwinAssignment pairing = grown.get(j).pairing();
    if (twins.refutes(pairing, later)) {
      contradicts(
          List.of(earlier, later),
          "by the first, %s has another twin".formatted(twins.name(later.a())));
    }
  }

  /** 0 to 1: how far the seeds are believed, by how much agrees around them and what doesn't. */
  double credit(PairingScore merit) {
    double credit = merit.quality() * Math.min(1, merit.pairs() / MANY);
    return contradictions.isEmpty() ? credit : Math.min(credit, 0.4);
  }
}
