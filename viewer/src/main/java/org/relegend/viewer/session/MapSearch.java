package org.relegend.viewer.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import org.relegend.map.BoardMap;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.MapIndex;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.ComponentValues;
import org.relegend.marking.ValueReading;

/**
 * Finds parts, pins and nets by anything that is known of them: designator, net name as built or as
 * drawn, value, kind, note. Immutable, so that it may search on any thread; one walk over the map a
 * search, a few milliseconds for 10,000 parts.
 */
public final class MapSearch {
  /** How well something fits, best first. */
  public enum Fit {
    NAME,
    NAME_BEGINS,
    DRAWN_NAME,
    VALUE,
    KIND,
    NAME_HAS,
    NOTE
  }

  /**
   * Something found.
   *
   * @param matched the text that fits, where it isn't the name
   */
  public record Found(Subject subject, Fit fit, String matched) {}

  private static final Comparator<Found> ORDER =
      Comparator.comparing(Found::fit).thenComparing(Found::subject);

  private final MapIndex index;

  /** Amounts by the text they were read from. */
  private final Map<String, List<Amount>> known = new ConcurrentHashMap<>();

  public MapSearch(BoardMap map) {
    index = new MapIndex(map);
  }

  /** The best finds, best first; nothing for a blank text. */
  public List<Found> find(String typed, int limit) {
    String text = fold(typed.strip());
    if (text.isEmpty()) {
      return List.of();
    }
    List<Found> found = new ArrayList<>();
    exact(typed).ifPresent(found::add);
    List<Amount> amounts = amountsIn(typed);
    for (Part part : index.map().parts()) {
      fitOf(part, text, amounts).ifPresent(found::add);
    }
    for (Net net : index.map().nets()) {
      fitOf(net, text).ifPresent(found::add);
    }
    addDrawn(text, found);
    return found.stream().sorted(ORDER).filter(distinctSubjects()).limit(limit).toList();
  }

  private static Predicate<Found> distinctSubjects() {
    Set<Subject> seen = new HashSet<>();
    return found -> seen.add(found.subject());
  }

  /** A full name: R101, "U102 pin 7", U101/Ta, A_ATT. */
  private Optional<Found> exact(String typed) {
    return new TypedName(index).known(typed).map(subject -> new Found(subject, Fit.NAME, ""));
  }

  private Optional<Found> fitOf(Part part, String text, List<Amount> amounts) {
    Subject subject = Subject.of(part.id());
    String name = fold(part.designator().text());
    if (name.startsWith(text)) {
      return Optional.of(new Found(subject, Fit.NAME_BEGINS, ""));
    }
    if (fold(part.value()).startsWith(text) || isOf(part, amounts)) {
      return Optional.of(new Found(subject, Fit.VALUE, part.value()));
    }
    if (fold(part.kind()).contains(text)) {
      return Optional.of(new Found(subject, Fit.KIND, part.kind()));
    }
    return name.contains(text)
        ? Optional.of(new Found(subject, Fit.NAME_HAS, ""))
        : fitOfNote(subject, part.note(), text);
  }

  /** 4k7 is 4.7k, and 0.1u is 100n: values are the same where their amounts are. */
  private boolean isOf(Part part, List<Amount> amounts) {
    return !amounts.isEmpty()
        && !part.value().isEmpty()
        && known.computeIfAbsent(part.value(), MapSearch::amountsIn).stream()
            .anyMatch(own -> amounts.stream().anyMatch(typed -> isSame(own, typed)));
  }

  private static boolean isSame(Amount a, Amount b) {
    return a.quantity() == b.quantity()
        && Math.abs(a.value() - b.value()) <= 1e-9 * Math.abs(a.value());
  }

  private static List<Amount> amountsIn(String value) {
    return ComponentValues.read(value).readings().stream().map(ValueReading::amount).toList();
  }

  private static Optional<Found> fitOf(Net net, String text) {
    Subject subject = Subject.of(net.id());
    String name = fold(net.name());
    if (name.startsWith(text)) {
      return Optional.of(new Found(subject, Fit.NAME_BEGINS, ""));
    }
    return name.contains(text)
        ? Optional.of(new Found(subject, Fit.NAME_HAS, ""))
        : fitOfNote(subject, net.note(), text);
  }

  private static Optional<Found> fitOfNote(Subject subject, String note, String text) {
    return fold(note).contains(text)
        ? Optional.of(new Found(subject, Fit.NOTE, note))
        : Optional.empty();
  }

  /** Pins that the drawing has on a net of that name, and parts it gives that value. */
  private void addDrawn(String text, List<Found> found) {
    for (DrawingDiscrepancy discrepancy : index.map().discrepancies()) {
      String drawn = drawnName(discrepancy);
      if (fold(drawn).startsWith(text)) {
        found.add(new Found(discrepancy.subject(), Fit.DRAWN_NAME, drawn));
      }
    }
  }

  private String drawnName(DrawingDiscrepancy discrepancy) {
    boolean isNet = discrepancy.aspect() == DrawingDiscrepancy.Aspect.NET;
    return isNet && !discrepancy.drawn().isEmpty()
        ? index.map().nameOf(Subject.of(new NetId(discrepancy.drawn())))
        : discrepancy.drawn();
  }

  private static String fold(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
