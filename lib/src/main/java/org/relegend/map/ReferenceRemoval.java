package org.relegend.map;

import java.util.List;
import java.util.function.Predicate;

/** Takes out of a map whatever speaks of something that is removed from it. */
final class ReferenceRemoval {
  private ReferenceRemoval() {}

  /** The map without entries that go with what is gone, in whatever table. */
  static BoardMap without(BoardMap map, EntryRef gone) {
    BoardMap result = map;
    for (MapTable<?, ?> table : MapTables.ALL) {
      result = without(table, result, gone);
    }
    return result;
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> BoardMap without(
      MapTable<K, V> table, BoardMap map, EntryRef gone) {
    Table<K, V> all = map.get(table);
    Table<K, V> kept = keep(all, entry -> !table.goesWith(entry).contains(gone));
    return kept.size() == all.size() ? map : map.with(table, kept);
  }

  static <K extends Comparable<? super K>, V extends Keyed<K>> Table<K, V> keep(
      Table<K, V> table, Predicate<V> kept) {
    List<V> rest = table.stream().filter(kept).toList();
    return rest.size() == table.size() ? table : Table.of(rest);
  }
}
