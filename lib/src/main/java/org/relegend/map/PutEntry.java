package org.relegend.map;

import java.util.List;

/** Adds an entry to a table of the map, or puts it in the place of the one with its key. */
public record PutEntry<K extends Comparable<? super K>, V extends Keyed<K>>(
    MapTable<K, V> table, V entry) implements Edit {
  @Override
  public String label(BoardMap map) {
    return table.putLabel(map, entry);
  }

  @Override
  public BoardMap applyTo(BoardMap map) throws EditRefusedException {
    return table.put(map, List.of(entry));
  }
}
