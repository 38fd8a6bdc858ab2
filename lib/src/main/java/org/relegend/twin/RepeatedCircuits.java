package org.relegend.twin;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.relegend.map.Subject;

/**
 * Finds where a circuit repeats itself: elements with the same surroundings, grown and compared.
 */
final class RepeatedCircuits {
  private static final int MOST_CHANNELS = 16;

  /** So many starts are grown and compared. */
  private static final int STARTS = 8;

  /** Less than so many pairs are no channel. */
  private static final int FEWEST = 3;

  private final TwinSearch twins;
  private final PinGraph graph;

  RepeatedCircuits(TwinSearch twins) {
    this.twins = twins;
    this.graph = twins.graph();
  }

  /** Two elements with what grows from them. */
  private record Start(List<Integer> alike, PairingScore merit) {}

  List<TwinSeed> seeds() {
    List<List<Integer>> classes = classes();
    List<Start> starts = new ArrayList<>();
    for (List<Integer> alike : classes.subList(0, Math.min(STARTS, classes.size()))) {
      PinGraphSearch search = twins.search();
      search.seed(alike.get(0), alike.get(1));
      search.run();
      if (search.merit().pairs() >= FEWEST) {
        starts.add(new Start(alike, search.merit()));
      }
    }
    return starts.stream()
        .max(Comparator.comparing(Start::merit))
        .map(start -> seeds(start.alike()))
        .orElse(List.of());
  }

  private List<TwinSeed> seeds(List<Integer> alike) {
    Subject first = graph.subjects.get(alike.get(0));
    return alike.subList(1, alike.size()).stream()
        .map(other -> new TwinSeed(first, graph.subjects.get(other)))
        .toList();
  }

  /**
   * Elements alike to the widest ring, of the number that most come in, those of most pins first.
   */
  private List<List<Integer>> classes() {
    Map<Long, List<Integer>> byLook = new HashMap<>();
    long[] look = twins.rings().get(0);
    for (int e = 0; e < graph.elements; e++) {
      if (graph.pins(e) > 1) {
        byLook.computeIfAbsent(look[e], k -> new ArrayList<>()).add(e);
      }
    }
    byLook.values().removeIf(c -> c.size() < 2 || c.size() > MOST_CHANNELS || parallel(c));
    Map<Integer, Integer> sizes = new HashMap<>();
    byLook.values().forEach(alike -> sizes.merge(alike.size(), 1, Integer::sum));
    int usual =
        sizes.entrySet().stream()
            .max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(e -> -e.getKey()))
            .map(Map.Entry::getKey)
            .orElse(0);
    return byLook.values().stream()
        .filter(alike -> alike.size() == usual)
        .sorted(
            Comparator.comparingInt((List<Integer> alike) -> -graph.pins(alike.get(0)))
                .thenComparingInt(alike -> alike.get(0)))
        .toList();
  }

  /** Whether two of them are joined to the same nets, as capacitors side by side. */
  private boolean parallel(List<Integer> alike) {
    Set<List<Integer>> nets = new HashSet<>();
    for (int e : alike) {
      List<Integer> own = new ArrayList<>();
      for (int i = graph.start[e]; i < graph.start[e + 1]; i++) {
        own.add(graph.net[i]);
      }
      own.sort(null);
      if (!nets.add(own)) {
        return true;
      }
    }
    return false;
  }
}
