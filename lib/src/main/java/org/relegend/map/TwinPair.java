package org.relegend.map;

import java.util.List;
import java.util.Optional;

/**
 * Two parts, sections, pins or nets that do the same work in two channels, as a person said or
 * accepted.
 *
 * @param a the one that comes first in order
 */
public record TwinPair(Subject a, Subject b, List<Attestation> evidence)
    implements Keyed<TwinPair.Key> {
  /** What a pair is found by. */
  public record Key(Subject a, Subject b) implements Comparable<Key> {
    @Override
    public int compareTo(Key other) {
      int order = a.compareTo(other.a);
      return order != 0 ? order : b.compareTo(other.b);
    }

    @Override
    public String toString() {
      return a + " = " + b;
    }
  }

  public TwinPair {
    if (a.getClass() != b.getClass()) {
      throw new IllegalArgumentException(
          "%s and %s can't be twins: a part has a part, a net has a net".formatted(a, b));
    }
    if (a.equals(b)) {
      throw new IllegalArgumentException("%s can't be its own twin".formatted(a));
    }
    if (a.compareTo(b) > 0) {
      Subject second = a;
      a = b;
      b = second;
    }
    evidence = List.copyOf(evidence);
    if (evidence.isEmpty()) {
      throw new IllegalArgumentException("twins %s = %s without evidence".formatted(a, b));
    }
  }

  @Override
  public Key key() {
    return new Key(a, b);
  }

  /** The other of the two, if this is one of them. */
  public Optional<Subject> other(Subject one) {
    return one.equals(a) ? Optional.of(b) : one.equals(b) ? Optional.of(a) : Optional.empty();
  }
}
