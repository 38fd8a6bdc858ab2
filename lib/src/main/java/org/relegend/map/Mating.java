package org.relegend.map;

/** Two connectors that are plugged together or wired one to one: pins of one number are joined. */
public record Mating(PartId a, PartId b) implements Keyed<Mating>, Comparable<Mating> {
  public Mating {
    if (a.equals(b)) {
      throw new IllegalArgumentException("connector %s can't be plugged into itself".formatted(a));
    }
    if (a.compareTo(b) > 0) {
      PartId second = a;
      a = b;
      b = second;
    }
  }

  @Override
  public Mating key() {
    return this;
  }

  @Override
  public int compareTo(Mating other) {
    int order = a.compareTo(other.a);
    return order != 0 ? order : b.compareTo(other.b);
  }
}
