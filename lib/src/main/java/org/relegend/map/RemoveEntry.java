package org.relegend.map;

/** Takes an entry out of a table of the map, and with it what speaks of it. */
public record RemoveEntry<K extends Comparable<? super K>, V extends Keyed<K>>(
    MapTable<K, V> table, K key) implements Edit {
  @Override
  public String label(BoardMap map) {
    return table.removeLabel(map, key);
  }

  @Override
  public BoardMap applyTo(BoardMap map) throws EditRefusedException {
    return table.remove(map, key);
  }
}
