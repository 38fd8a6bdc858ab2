package org.relegend.map;

import java.util.List;
import java.util.Locale;

/**
 * Where two channels differ, with what a technician says of it: that it is meant so, a fault, or
 * the work of an earlier repair.
 *
 * @param at the two places in order; one alone where the other channel has nothing there
 */
public record ChannelDeviation(
    List<Subject> at, Aspect aspect, Cause cause, List<Attestation> evidence, String note)
    implements Keyed<ChannelDeviation.Key> {
  /** In what the channels differ. */
  public enum Aspect {
    /** What one channel has is missing from the other. */
    MISSING,
    VALUE,
    KIND,
    CONNECTION;

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

  /** Why they differ. */
  public enum Cause {
    DESIGN,
    FAULT,
    REPAIR;

    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Reads such a word.
     *
     * @throws IllegalArgumentException where it is none of them
     */
    public static Cause of(String word) {
      return FixedWords.find(values(), Cause::word, "cause", word);
    }
  }

  /** What a deviation is found by; made from the places in either order. */
  public record Key(List<Subject> at, Aspect aspect) implements Comparable<Key> {
    public Key {
      at = ordered(at);
    }

    @Override
    public int compareTo(Key other) {
      int order = at.get(0).compareTo(other.at.get(0));
      if (order == 0) {
        order = Integer.compare(at.size(), other.at.size());
      }
      if (order == 0 && at.size() == 2) {
        order = at.get(1).compareTo(other.at.get(1));
      }
      return order != 0 ? order : aspect.compareTo(other.aspect);
    }

    @Override
    public String toString() {
      return aspect.word() + " of " + String.join(", ", at.stream().map(Object::toString).toList());
    }
  }

  public ChannelDeviation {
    at = ordered(at);
    TextRules.note(note);
    evidence = List.copyOf(evidence);
    if (evidence.isEmpty()) {
      throw new IllegalArgumentException("a deviation at %s without evidence".formatted(at));
    }
  }

  private static List<Subject> ordered(List<Subject> places) {
    if (places.isEmpty() || places.size() > 2) {
      throw new IllegalArgumentException(
          "a deviation is of one place or of two, not of " + places.size());
    }
    return places.stream().sorted().toList();
  }

  @Override
  public Key key() {
    return new Key(at, aspect);
  }
}
