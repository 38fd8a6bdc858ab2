package org.relegend.share;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.Net;
import org.relegend.map.Placement;

/** How far a map can be trusted: who says what, when, and on which evidence. */
public final class TrustReport {
  /**
   * What one author stands for: how often, by evidence.
   *
   * @param name empty where a table gave none
   */
  public record Author(String name, Map<Evidence, Integer> counts, Instant first, Instant last) {}

  /**
   * Which statements are looked for; all that are given must fit.
   *
   * @param least evidence that is trusted at least so far
   * @param since not said before then
   */
  public record Filter(Optional<String> author, Optional<Evidence> least, Optional<Instant> since) {
    /** Whether one who stands for something fits. */
    public boolean takes(Attestation attestation) {
      return author.filter(name -> !name.equals(attestation.author())).isEmpty()
          && least.filter(limit -> attestation.evidence().compareTo(limit) > 0).isEmpty()
          && since.filter(limit -> attestation.at().isBefore(limit)).isEmpty();
    }
  }

  private final List<Author> authors;
  private final Map<Evidence, Integer> best = new EnumMap<>(Evidence.class);
  private int confirmed;

  private TrustReport(BoardMap map) {
    Map<String, List<Attestation>> byAuthor = new TreeMap<>();
    for (Statement statement : Statement.of(map)) {
      List<Attestation> evidence = statement.by();
      evidence.forEach(
          attestation ->
              byAuthor
                  .computeIfAbsent(attestation.author(), name -> new ArrayList<>())
                  .add(attestation));
      Attestation.best(evidence).ifPresent(found -> best.merge(found, 1, Integer::sum));
      if (evidence.stream().map(Attestation::author).distinct().count() > 1) {
        confirmed++;
      }
    }
    authors = byAuthor.entrySet().stream().map(e -> author(e.getKey(), e.getValue())).toList();
  }

  public static TrustReport of(BoardMap map) {
    return new TrustReport(map);
  }

  private static Author author(String name, List<Attestation> all) {
    Map<Evidence, Integer> stated = new EnumMap<>(Evidence.class);
    all.forEach(one -> stated.merge(one.evidence(), 1, Integer::sum));
    Instant first = all.stream().map(Attestation::at).min(Instant::compareTo).orElseThrow();
    Instant last = all.stream().map(Attestation::at).max(Instant::compareTo).orElseThrow();
    return new Author(name, stated, first, last);
  }

  /** Placements that somebody who fits stands for. */
  public static List<Placement> placements(BoardMap map, Filter filter) {
    Predicate<Placement> fits = p -> p.evidence().stream().anyMatch(filter::takes);
    return map.placements().stream().filter(fits).toList();
  }

  /**
   * Nets with those of their pins that somebody who fits stands for; without any they are left out.
   */
  public static List<Net> nets(BoardMap map, Filter filter) {
    return map.nets().stream()
        .map(
            net ->
                net.withMembers(
                    net.members().stream()
                        .filter(member -> member.evidence().stream().anyMatch(filter::takes))
                        .toList()))
        .filter(net -> !net.members().isEmpty())
        .toList();
  }

  /** Those who stand for a placement or a pin's net, by name. */
  public List<Author> authors() {
    return authors;
  }

  /** Placements and pins' nets, by the best evidence there is for each. */
  public Map<Evidence, Integer> best() {
    return Map.copyOf(best);
  }

  /** How many of those more than one stands for. */
  public int confirmed() {
    return confirmed;
  }

  /** The same for people, a line each. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (Author author : authors) {
      lines.add(
          "%s, %s to %s: %s"
              .formatted(
                  author.name().isEmpty() ? "no name given" : author.name(),
                  author.first().toString().substring(0, 10),
                  author.last().toString().substring(0, 10),
                  counted(author.counts())));
    }
    lines.add(
        "best evidence of all: %s; confirmed by a second person: %d"
            .formatted(counted(best), confirmed));
    lines.add(shares());
    return lines;
  }

  /** How much is measured, and how much is no more than concluded. */
  private String shares() {
    long all = best.values().stream().mapToLong(count -> count).sum();
    long measured = count(Evidence.MEASURED) + count(Evidence.BEEPED);
    long seen = count(Evidence.SEEN) + count(Evidence.MATCHED);
    return all == 0
        ? "nothing is placed or joined yet"
        : "measured or beeped %d %%, seen or matched %d %%, inferred or guessed %d %%"
            .formatted(
                Math.round(100.0 * measured / all),
                Math.round(100.0 * seen / all),
                Math.round(100.0 * (all - measured - seen) / all));
  }

  private long count(Evidence evidence) {
    return best.getOrDefault(evidence, 0);
  }

  private static String counted(Map<Evidence, Integer> stated) {
    List<String> parts = new ArrayList<>();
    stated.forEach((evidence, count) -> parts.add(count + " " + evidence.word()));
    return parts.isEmpty() ? "nothing" : String.join(", ", parts);
  }
}
