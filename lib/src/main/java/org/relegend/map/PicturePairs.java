package org.relegend.map;

import java.util.List;
import java.util.Locale;

/**
 * The same spots on two pictures of one board: what a line-up of the two is fitted to. The line-up
 * itself is computed, never kept.
 *
 * @param a the picture that comes first in order
 * @param evidence who clicked or accepted the pairs, in order of time
 */
public record PicturePairs(
    PictureId a, PictureId b, Origin origin, List<Spot> spots, List<Attestation> evidence)
    implements Keyed<PicturePairs.Key> {
  /** One spot, on each picture in its own units. */
  public record Spot(Point onA, Point onB) {
    Spot swapped() {
      return new Spot(onB, onA);
    }
  }

  /** How the pairs came about, which tells what their disagreement means. */
  public enum Origin {
    /** By a person, each one meant: a pair may be wrong, the rest err as clicks do. */
    CLICKED,
    /** By the program, many at once, and accepted: they err as parts lean and lenses bend. */
    AUTOMATIC;

    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Reads such a word.
     *
     * @throws IllegalArgumentException where it is none of them
     */
    public static Origin of(String word) {
      return FixedWords.find(values(), Origin::word, "way to find pairs", word);
    }
  }

  /** What the pairs are found by: the two pictures, in order. */
  public record Key(PictureId a, PictureId b) implements Comparable<Key> {
    /** Of two pictures in either order. */
    public static Key of(PictureId one, PictureId other) {
      return one.compareTo(other) <= 0 ? new Key(one, other) : new Key(other, one);
    }

    @Override
    public int compareTo(Key other) {
      int order = a.compareTo(other.a);
      return order != 0 ? order : b.compareTo(other.b);
    }

    @Override
    public String toString() {
      return a + " to " + b;
    }
  }

  public PicturePairs {
    if (a.equals(b)) {
      throw new IllegalArgumentException("picture %s can't be lined up with itself".formatted(a));
    }
    spots = List.copyOf(spots);
    evidence = List.copyOf(evidence);
    if (a.compareTo(b) > 0) {
      PictureId second = a;
      a = b;
      b = second;
      spots = spots.stream().map(Spot::swapped).toList();
    }
    if (spots.isEmpty()) {
      throw new IllegalArgumentException("a line-up of %s and %s without pairs".formatted(a, b));
    }
    if (evidence.isEmpty()) {
      throw new IllegalArgumentException("a line-up of %s and %s without evidence".formatted(a, b));
    }
  }

  @Override
  public Key key() {
    return new Key(a, b);
  }

  /** The spots as seen from one of the two pictures: that one's point first. */
  public List<Spot> from(PictureId first) {
    return first.equals(a) ? spots : spots.stream().map(Spot::swapped).toList();
  }

  /** The same pairs, with one more who stands for them. */
  public PicturePairs confirmedBy(Attestation attestation) {
    return new PicturePairs(
        a, b, origin, spots, AttestationMerge.union(evidence, List.of(attestation)));
  }
}
