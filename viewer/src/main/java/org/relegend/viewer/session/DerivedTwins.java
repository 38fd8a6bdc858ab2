package org.relegend.viewer.session;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;
import org.relegend.twin.ProposedTwin;
import org.relegend.twin.SeedContradiction;
import org.relegend.twin.TwinAcceptance;
import org.relegend.twin.TwinBasis;
import org.relegend.twin.TwinDifference;
import org.relegend.twin.TwinGroup;
import org.relegend.twin.TwinResult;
import org.relegend.twin.TwinSearch;
import org.relegend.twin.TwinSeed;

/**
 * What follows from the twins that a map holds, worked out for one state of it. Immutable, so that
 * any thread may make one.
 */
public final class DerivedTwins {
  /** Nothing worked out, or nothing follows. */
  public static final DerivedTwins NONE = new DerivedTwins(List.of(), false, "", Set.of());

  /** Channels beside each other that are looked into: each takes a search of its own. */
  private static final int MOST = 8;

  /** A twin that follows, and what from. */
  public record Found(ProposedTwin pair, NodeCard.Follows follows) {}

  private final List<TwinResult> results;
  private final boolean unasked;
  private final String problem;
  private final Set<TwinPair.Key> rejected;
  private final Map<Subject, Found> bySubject = new HashMap<>();

  private DerivedTwins(
      List<TwinResult> found, boolean unasked, String problem, Set<TwinPair.Key> rejected) {
    this.results = List.copyOf(found);
    this.unasked = unasked;
    this.problem = problem;
    this.rejected = Set.copyOf(rejected);
    if (!unasked) {
      this.results.forEach(this::note);
    }
  }

  /**
   * Works it out; for 10,000 parts some tenths of a second.
   *
   * @param declared the pair that was said last, which stands against all others
   * @param alone whether to look for channels where the map holds no twins at all
   */
  public static DerivedTwins of(BoardMap map, Optional<TwinSeed> declared, boolean alone) {
    List<TwinSeed> known =
        map.twins().stream().map(pair -> new TwinSeed(pair.a(), pair.b())).toList();
    if (known.isEmpty() && !alone) {
      return NONE;
    }
    TwinSearch search = TwinSearch.of(Circuit.of(map));
    if (known.isEmpty()) {
      List<TwinResult> found =
          search.proposed().stream().map(seed -> search.from(List.of(seed))).toList();
      return new DerivedTwins(found, true, "", Set.of());
    }
    List<TwinSeed> asked = declared.filter(known::contains).map(List::of).orElse(List.of());
    try {
      return new DerivedTwins(chains(search, asked, known), false, "", Set.of());
    } catch (IllegalArgumentException unplaced) {
      return new DerivedTwins(
          chains(search, List.of(), known), false, String.valueOf(unplaced.getMessage()), Set.of());
    }
  }

  /** One search for each two channels that the known pairs stand between. */
  private static List<TwinResult> chains(
      TwinSearch search, List<TwinSeed> asked, List<TwinSeed> known) {
    List<TwinResult> found = new ArrayList<>();
    List<TwinSeed> first = asked;
    List<TwinSeed> left = new ArrayList<>(known);
    while (!left.isEmpty() && found.size() < MOST) {
      TwinResult twins = search.from(first, left);
      if (!left.removeAll(taken(twins))) {
        break;
      }
      found.add(twins);
      first = List.of();
    }
    return found;
  }

  private static Set<TwinSeed> taken(TwinResult twins) {
    Set<TwinSeed> taken = new HashSet<>();
    for (List<ProposedTwin> pairs : List.of(twins.pairs(), twins.pins())) {
      for (ProposedTwin pair : pairs) {
        taken.add(new TwinSeed(pair.a(), pair.b()));
        taken.add(new TwinSeed(pair.b(), pair.a()));
      }
    }
    twins.contradictions().forEach(contradiction -> taken.addAll(contradiction.pairs()));
    return taken;
  }

  private void note(TwinResult twins) {
    List<ProposedTwin> stated =
        twins.pairs().stream().filter(pair -> pair.basis() == TwinBasis.DECLARED).toList();
    if (stated.isEmpty()) {
      return;
    }
    NodeCard.Follows follows = new NodeCard.Follows(key(stated.get(0)), stated.size() - 1);
    for (List<ProposedTwin> pairs : List.of(twins.pairs(), twins.pins())) {
      for (ProposedTwin pair : pairs) {
        if (TwinAcceptance.isSure(pair) && !isRejected(pair)) {
          Found one = new Found(pair, follows);
          bySubject.putIfAbsent(pair.a(), one);
          bySubject.putIfAbsent(pair.b(), one);
        }
      }
    }
  }

  /** In order, as the map keeps pairs. */
  public static TwinPair.Key key(ProposedTwin pair) {
    return pair.a().compareTo(pair.b()) <= 0
        ? new TwinPair.Key(pair.a(), pair.b())
        : new TwinPair.Key(pair.b(), pair.a());
  }

  /** The same, with these pairs not believed. */
  public DerivedTwins rejecting(Collection<TwinPair.Key> pairs) {
    return new DerivedTwins(results, unasked, problem, Set.copyOf(pairs));
  }

  public boolean isRejected(ProposedTwin pair) {
    return rejected.contains(key(pair));
  }

  /** The twin of a part, section, pin or net that is sure enough to be used. */
  public Optional<Found> of(Subject subject) {
    return Optional.ofNullable(bySubject.get(subject));
  }

  /** Those that any of may be the twin, where the circuit can't tell which. */
  public List<Subject> several(Subject subject) {
    for (TwinGroup group : groups()) {
      if (group.a().contains(subject)) {
        return group.b();
      }
      if (group.b().contains(subject)) {
        return group.a();
      }
    }
    return List.of();
  }

  /** Whether nobody said any twins, and all was found by itself. */
  public boolean isUnasked() {
    return unasked;
  }

  /** Why nothing follows from the pair said last; empty where something does. */
  public String problem() {
    return problem;
  }

  /** Parts, sections and nets, of all channels. */
  public List<ProposedTwin> pairs() {
    return results.stream().flatMap(twins -> twins.pairs().stream()).toList();
  }

  public List<TwinGroup> groups() {
    return results.stream().flatMap(twins -> twins.groups().stream()).toList();
  }

  public List<TwinDifference> differences() {
    return results.stream().flatMap(twins -> twins.differences().stream()).toList();
  }

  public List<SeedContradiction> contradictions() {
    return results.stream().flatMap(twins -> twins.contradictions().stream()).toList();
  }

  /** Each two channels by themselves, without what was rejected. */
  public List<TwinResult> channels() {
    return results.stream().map(this::withoutRejected).toList();
  }

  private TwinResult withoutRejected(TwinResult twins) {
    return new TwinResult(
        twins.pairs().stream().filter(pair -> !isRejected(pair)).toList(),
        twins.pins(),
        twins.groups(),
        twins.differences(),
        twins.contradictions(),
        twins.common());
  }
}
