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
import org.relegend.twin.Accepting;
import org.relegend.twin.Basis;
import org.relegend.twin.Contradiction;
import org.relegend.twin.Difference;
import org.relegend.twin.ProposedTwin;
import org.relegend.twin.Seed;
import org.relegend.twin.TwinGroup;
import org.relegend.twin.TwinSearch;
import org.relegend.twin.Twins;

/**
 * What follows from the twins that a map holds, worked out for one state of it. Immutable, so that
 * any thread may make one.
 */
public final class Following {
  /** Nothing worked out, or nothing follows. */
  public static final Following NONE = new Following(List.of(), false, "", Set.of());

  /** Channels beside each other that are looked into: each takes a search of its own. */
  private static final int MOST = 8;

  /** A twin that follows, and what from. */
  public record Found(ProposedTwin pair, Card.Follows follows) {}

  private final List<Twins> found;
  private final boolean unasked;
  private final String problem;
  private final Set<TwinPair.Key> rejected;
  private final Map<Subject, Found> bySubject = new HashMap<>();

  private Following(
      List<Twins> found, boolean unasked, String problem, Set<TwinPair.Key> rejected) {
    this.found = List.copyOf(found);
    this.unasked = unasked;
    this.problem = problem;
    this.rejected = Set.copyOf(rejected);
    if (!unasked) {
      this.found.forEach(this::note);
    }
  }

  /**
   * Works it out; for 10,000 parts some tenths of a second.
   *
   * @param said the pair that was said last, which stands against all others
   * @param alone whether to look for channels where the map holds no twins at all
   */
  public static Following of(BoardMap map, Optional<Seed> said, boolean alone) {
    List<Seed> known = map.twins().stream().map(pair -> new Seed(pair.a(), pair.b())).toList();
    if (known.isEmpty() && !alone) {
      return NONE;
    }
    TwinSearch search = TwinSearch.of(Circuit.of(map));
    if (known.isEmpty()) {
      List<Twins> found =
          search.proposed().stream().map(seed -> search.from(List.of(seed))).toList();
      return new Following(found, true, "", Set.of());
    }
    List<Seed> asked = said.filter(known::contains).map(List::of).orElse(List.of());
    try {
      return new Following(chains(search, asked, known), false, "", Set.of());
    } catch (IllegalArgumentException unplaced) {
      return new Following(
          chains(search, List.of(), known), false, String.valueOf(unplaced.getMessage()), Set.of());
    }
  }

  /** One search for each two channels that the known pairs stand between. */
  private static List<Twins> chains(TwinSearch search, List<Seed> asked, List<Seed> known) {
    List<Twins> found = new ArrayList<>();
    List<Seed> first = asked;
    List<Seed> left = new ArrayList<>(known);
    while (!left.isEmpty() && found.size() < MOST) {
      Twins twins = search.from(first, left);
      if (!left.removeAll(taken(twins))) {
        break;
      }
      found.add(twins);
      first = List.of();
    }
    return found;
  }

  private static Set<Seed> taken(Twins twins) {
    Set<Seed> taken = new HashSet<>();
    for (List<ProposedTwin> pairs : List.of(twins.pairs(), twins.pins())) {
      for (ProposedTwin pair : pairs) {
        taken.add(new Seed(pair.a(), pair.b()));
        taken.add(new Seed(pair.b(), pair.a()));
      }
    }
    twins.contradictions().forEach(contradiction -> taken.addAll(contradiction.pairs()));
    return taken;
  }

  private void note(Twins twins) {
    List<ProposedTwin> said =
        twins.pairs().stream().filter(pair -> pair.basis() == Basis.DECLARED).toList();
    if (said.isEmpty()) {
      return;
    }
    Card.Follows follows = new Card.Follows(key(said.get(0)), said.size() - 1);
    for (List<ProposedTwin> pairs : List.of(twins.pairs(), twins.pins())) {
      for (ProposedTwin pair : pairs) {
        if (Accepting.isSure(pair) && !isRejected(pair)) {
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
  public Following rejecting(Collection<TwinPair.Key> pairs) {
    return new Following(found, unasked, problem, Set.copyOf(pairs));
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
    return found.stream().flatMap(twins -> twins.pairs().stream()).toList();
  }

  public List<TwinGroup> groups() {
    return found.stream().flatMap(twins -> twins.groups().stream()).toList();
  }

  public List<Difference> differences() {
    return found.stream().flatMap(twins -> twins.differences().stream()).toList();
  }

  public List<Contradiction> contradictions() {
    return found.stream().flatMap(twins -> twins.contradictions().stream()).toList();
  }

  /** Each two channels by themselves, without what was rejected. */
  public List<Twins> channels() {
    return found.stream().map(this::withoutRejected).toList();
  }

  private Twins withoutRejected(Twins twins) {
    return new Twins(
        twins.pairs().stream().filter(pair -> !isRejected(pair)).toList(),
        twins.pins(),
        twins.groups(),
        twins.differences(),
        twins.contradictions(),
        twins.common());
  }
}
