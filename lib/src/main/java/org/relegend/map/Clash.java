package org.relegend.map;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What two people said differently of one thing, kept with both versions until somebody decides.
 * Until then the map goes on with {@code mine}.
 *
 * @param about what they differ in, in the words of the file: "parts R116 value"; with {@code
 *     ordinal} what the clash is found by
 * @param ordinal 1, or counting on where there are several clashes about one thing
 * @param cells all that the decision is about, taken together
 */
public record Clash(String about, int ordinal, List<Cell> cells) implements Keyed<Clash.Key> {
  /** Longest version taken, in characters. */
  public static final int MAX_VERSION = 150_000;

  /**
   * One value that differs. The versions are compact JSON; an empty text means that the value is
   * not there.
   *
   * @param table where in the map it is: "parts"
   * @param key which entry of that table
   * @param field which field of it; empty for the entry as a whole
   */
  public record Cell(String table, String key, String field, String mine, String theirs) {
    public Cell {
      NameRules.checked("table", table);
      TextRules.note(key);
      TextRules.line("field", field);
      for (String version : List.of(mine, theirs)) {
        TextRules.note("version", version, MAX_VERSION);
      }
      if (mine.equals(theirs)) {
        throw new IllegalArgumentException(
            "both versions of %s %s are the same".formatted(table, key));
      }
    }

    /** Seen by the other of the two. */
    public Cell swapped() {
      return new Cell(table, key, field, theirs, mine);
    }
  }

  /** What a clash is found by. */
  public record Key(String about, int ordinal) implements Comparable<Key> {
    private static final Comparator<Key> ORDER =
        Comparator.comparing(Key::about, NameRules.NATURAL).thenComparing(Key::ordinal);

    @Override
    public int compareTo(Key other) {
      return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
      return ordinal == 1 ? about : about + " #" + ordinal;
    }
  }

  public Clash {
    TextRules.note(about);
    if (about.isBlank()) {
      throw new IllegalArgumentException("a clash about nothing");
    }
    if (ordinal < 1) {
      throw new IllegalArgumentException("clashes about one thing count from 1, not " + ordinal);
    }
    cells = List.copyOf(cells);
    if (cells.isEmpty()) {
      throw new IllegalArgumentException("a clash without versions: " + about);
    }
    Set<List<String>> places = new HashSet<>();
    for (Cell cell : cells) {
      if (!places.add(List.of(cell.table(), cell.key(), cell.field()))) {
        throw new IllegalArgumentException(
            "%s %s %s stands twice in one clash".formatted(cell.table(), cell.key(), cell.field()));
      }
    }
  }

  @Override
  public Key key() {
    return new Key(about, ordinal);
  }

  /** Seen by the other of the two. */
  public Clash swapped() {
    return new Clash(about, ordinal, cells.stream().map(Cell::swapped).toList());
  }
}
