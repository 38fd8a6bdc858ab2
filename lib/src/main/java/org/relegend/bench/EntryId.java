package org.relegend.bench;

/** The number of a reading, a hypothesis or a line of the log: counted from 1 in each list. */
public record EntryId(int number) implements Comparable<EntryId> {
  public EntryId {
    if (number < 1) {
      throw new IllegalArgumentException("entries count from 1, not " + number);
    }
  }

  @Override
  public int compareTo(EntryId other) {
    return Integer.compare(number, other.number);
  }

  @Override
  public String toString() {
    return Integer.toString(number);
  }
}
