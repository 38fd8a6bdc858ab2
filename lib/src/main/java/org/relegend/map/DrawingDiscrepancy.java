package org.relegend.map;

import java.util.List;
import java.util.Locale;

/**
 * Where the drawing says something other than the board as built.
 *
 * @param subject a pin for {@link Aspect#NET}, a part for the other aspects
 * @param drawn what the drawing has: a net's id, or a value or kind; empty where it shows nothing
 */
public record DrawingDiscrepancy(
    Subject subject, Aspect aspect, String drawn, List<Attestation> evidence, String note)
    implements Keyed<DrawingDiscrepancy.Key> {
  /** In what the two differ. */
  public enum Aspect {
    NET,
    VALUE,
    KIND;

    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Reads such a word.
     *
     * @throws IllegalArgumentException where it is none of them
     */
    public static Aspect of(String word) {
      return FixedWords.find(values(), Aspect::word, "aspect", word);
    }
  }

  /** What a discrepancy is found by. */
  public record Key(Subject subject, Aspect aspect) implements Comparable<Key> {
    @Override
    public int compareTo(Key other) {
      int order = subject.compareTo(other.subject);
      return order != 0 ? order : aspect.compareTo(other.aspect);
    }

    @Override
    public String toString() {
      return aspect.word() + " of " + subject;
    }
  }

  public DrawingDiscrepancy {
    TextRules.line("drawn " + aspect.word(), drawn);
    TextRules.note(note);
    boolean fits =
        aspect == Aspect.NET ? subject instanceof Subject.OfPin : subject instanceof Subject.OfPart;
    if (!fits) {
      throw new IllegalArgumentException(
          "a discrepancy of %s can't be said of %s".formatted(aspect.word(), subject));
    }
    evidence = List.copyOf(evidence);
    if (evidence.isEmpty()) {
      throw new IllegalArgumentException("a discrepancy of %s without evidence".formatted(subject));
    }
  }

  @Override
  public Key key() {
    return new Key(subject, aspect);
  }
}
