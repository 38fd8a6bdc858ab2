package org.relegend.twin;

import static org.relegend.twin.TwinAssignment.NONE;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.relegend.circuit.Circuit;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;

/**
 * Finds the twins in one circuit. Made in one pass over it and valid for it only; each search
 * stands for itself.
 */
public final class TwinSearch {
  private final MapGraph map;
  private final List<long[]> rings;

  private TwinSearch(Circuit circuit) {
    map = new MapGraph(circuit);
    rings = PinGraphSearch.rings(map.graph, true);
  }

  public static TwinSearch of(Circuit circuit) {
    return new TwinSearch(circuit);
  }

  /** The twins that the map holds already, as seeds. */
  public List<TwinSeed> known() {
    List<TwinSeed> known = new ArrayList<>();
    for (TwinPair pair : map.circuit.map().twins()) {
      known.add(new TwinSeed(pair.a(), pair.b()));
    }
    return known;
  }

  /**
   * All that follows from these seeds; the first seed says which channel is which, later ones may
   * stand either way round.
   *
   * @throws IllegalArgumentException where a seed names something that the map hasn't got, or that
   *     has no pins yet and so no place in the circuit
   */
  public TwinResult from(List<TwinSeed> seeds) {
    return from(seeds, List.of());
  }

  /**
   * As {@link #from(List)}, with twins that are held already: they are used as seeds, but where one
   * of them stands between two other channels than the seeds it is left aside.
   */
  public TwinResult from(List<TwinSeed> seeds, List<TwinSeed> known) {
    if (seeds.isEmpty() && known.isEmpty()) {
      return TwinResult.NONE;
    }
    List<TwinSeed> all = new ArrayList<>(new LinkedHashSet<>(seeds));
    for (TwinSeed seed : known) {
      if (placed(seed) && !all.contains(seed) && !all.contains(seed.reversed())) {
        all.add(seed);
      }
    }
    for (TwinSeed seed : seeds) {
      require(seed);
    }
    if (all.isEmpty()) {
      return TwinResult.NONE;
    }
    SeedRivals doubts = new SeedRivals(this, all, seeds.size());
    PinGraphSearch search =
        all.size() == 1 ? doubts.fromFirst() : SearchRestarts.at(together(all, doubts.refused()));
    double credit = doubts.credit(search.merit());
    boolean[] kept = ChannelChains.kept(search.pairing(), search.anchor());
    List<ProposedTwin> common = new CommonParts(map, search.pairing(), kept, credit).pairs();
    return new TwinReport(map, search.pairing(), kept, credit)
        .twins(common, doubts.contradictions());
  }

  /** What follows from all seeds that aren't refused, one after the other. */
  private PinGraphSearch together(List<TwinSeed> seeds, Set<TwinSeed> refused) {
    PinGraphSearch search = search();
    boolean planted = false;
    for (TwinSeed seed : seeds) {
      if (!refused.contains(seed) && !refutes(search.pairing(), seed)) {
        plant(search, seed);
        planted = true;
        search.run();
      }
    }
    if (!planted) {
      plant(search, seeds.get(0));
      search.run();
    }
    return search;
  }

  /**
   * A seed for each further channel where the circuit repeats itself, found without any help: the
   * first parts of all seeds are one and the same. Empty where nothing repeats.
   */
  public List<TwinSeed> proposed() {
    return new RepeatedCircuits(this).seeds();
  }

  PinGraphSearch search() {
    return new PinGraphSearch(map.graph, rings);
  }

  PinGraph graph() {
    return map.graph;
  }

  String name(Subject subject) {
    return map.circuit.map().nameOf(subject);
  }

  List<long[]> rings() {
    return rings;
  }

  MapGraph map() {
    return map;
  }

  private void require(TwinSeed seed) {
    for (Subject subject : List.of(seed.a(), seed.b())) {
      if (!placed(subject)) {
        throw new IllegalArgumentException(
            "%s has no pins on any net yet, so nothing can follow from it"
                .formatted(name(subject)));
      }
    }
  }

  private boolean placed(TwinSeed seed) {
    return placed(seed.a()) && placed(seed.b());
  }

  private boolean placed(Subject subject) {
    if (subject instanceof Subject.OfNet net) {
      return map.net(net).filter(n -> map.graph.degree(n) > 0).isPresent();
    }
    return elements(subject).stream().anyMatch(e -> map.graph.pins(e) > 0);
  }

  /** What a part, section or pin is among the elements. */
  List<Integer> elements(Subject subject) {
    if (subject instanceof Subject.OfSection) {
      return map.element(subject).stream().toList();
    }
    PartId id =
        subject instanceof Subject.OfPin pin ? pin.pin().part() : ((Subject.OfPart) subject).part();
    Optional<Part> part = map.circuit.map().part(id);
    return part.map(map::elementsOf).orElse(List.of());
  }

  /**
   * Whether what is found has other twins for one of the two, and not these the other way round.
   */
  boolean refutes(TwinAssignment pairing, TwinSeed seed) {
    return against(pairing, seed) && !holds(pairing, seed.reversed())
        || against(pairing, seed.reversed()) && !holds(pairing, seed);
  }

  private boolean holds(TwinAssignment pairing, TwinSeed seed) {
    if (seed.a() instanceof Subject.OfNet) {
      return pairing.netTwin[map.net(seed.a()).orElse(NONE)] == map.net(seed.b()).orElse(NONE);
    }
    List<Integer> seconds = elements(seed.b());
    return elements(seed.a()).stream().anyMatch(a -> seconds.contains(pairing.twin[a]));
  }

  /** Whether this pairing has another twin for one of the two, this way round. */
  boolean against(TwinAssignment pairing, TwinSeed seed) {
    if (seed.a() instanceof Subject.OfNet) {
      int a = map.net(seed.a()).orElse(NONE);
      int b = map.net(seed.b()).orElse(NONE);
      return differs(pairing.netTwin[a], b) || differs(pairing.netBack[b], a);
    }
    List<Integer> firsts = elements(seed.a());
    List<Integer> seconds = elements(seed.b());
    for (int a : firsts) {
      if (pairing.twin[a] != NONE && !seconds.contains(pairing.twin[a])) {
        return !interchangeable(pairing, a, seconds);
      }
    }
    for (int b : seconds) {
      if (pairing.back[b] != NONE && !firsts.contains(pairing.back[b])) {
        return !interchangeable(pairing, pairing.back[b], seconds);
      }
    }
    return false;
  }

  private static boolean interchangeable(TwinAssignment pairing, int first, List<Integer> seconds) {
    TwinAssignment.Several several = pairing.several.get(first);
    return several != null && several.seconds().stream().anyMatch(seconds::contains);
  }

  private static boolean differs(int found, int wanted) {
    return found != NONE && found != wanted;
  }

  /** Pairs the seed's elements and nets; of parts with like sections those that fit best. */
  void plant(PinGraphSearch search, TwinSeed seed) {
    TwinSeed turned = against(search.pairing(), seed) ? seed.reversed() : seed;
    if (turned.a() instanceof Subject.OfNet) {
      search.seedNets(map.net(turned.a()).orElse(NONE), map.net(turned.b()).orElse(NONE));
      return;
    }
    List<Integer> firsts = elements(turned.a());
    List<Integer> seconds = elements(turned.b());
    if (firsts.size() == 1 && seconds.size() == 1) {
      search.seed(firsts.get(0), seconds.get(0));
      pins(search, turned);
      return;
    }
    bySections(search, firsts, seconds);
  }

  private void pins(PinGraphSearch search, TwinSeed seed) {
    if (seed.a() instanceof Subject.OfPin a && seed.b() instanceof Subject.OfPin b) {
      Optional<Integer> first = net(a);
      Optional<Integer> second = net(b);
      if (first.isPresent() && second.isPresent()) {
        search.seedNets(first.get(), second.get());
      }
    }
  }

  private Optional<Integer> net(Subject.OfPin pin) {
    return map.circuit.index().netsOf(pin.pin()).stream()
        .findFirst()
        .map(net -> new NetId(net.id().text()))
        .flatMap(id -> map.net(Subject.of(id)));
  }

  /** Tries the first section with each of the other's like sections; what follows decides. */
  private void bySections(PinGraphSearch search, List<Integer> firsts, List<Integer> seconds) {
    PinGraph graph = map.graph;
    int first = firsts.get(0);
    int best = NONE;
    PairingScore bestMerit = search.merit();
    for (int second : seconds) {
      if (graph.kind[first] == graph.kind[second]) {
        PinGraphSearch trial = search();
        trial.seed(first, second);
        trial.run();
        if (best == NONE || trial.merit().compareTo(bestMerit) > 0) {
          bestMerit = trial.merit();
          best = second;
        }
      }
    }
    if (best == NONE) {
      best = seconds.get(0);
    }
    search.seed(first, best);
  }
}
