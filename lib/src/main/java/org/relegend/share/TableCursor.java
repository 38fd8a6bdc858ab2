package org.relegend.share;

import org.jspecify.annotations.Nullable;
import org.relegend.map.Keyed;
import org.relegend.map.Table;

/** A walk through one table, key by key. */
final class TableCursor<K extends Comparable<? super K>, V extends Keyed<K>> {
  private final Table<K, V> table;
  private int next;

  TableCursor(Table<K, V> table) {
    this.table = table;
  }

  private @Nullable K key() {
    return next < table.size() ? table.at(next).key() : null;
  }

  /** The lower of the next keys of two walks; null at the end of both. */
  static <K extends Comparable<? super K>, V extends Keyed<K>> @Nullable K first(
      TableCursor<K, V> one, TableCursor<K, V> other) {
    K a = one.key();
    K b = other.key();
    if (a == null || b == null) {
      return a == null ? b : a;
    }
    return a.equals(b) || a.compareTo(b) < 0 ? a : b; // most are equal, which is told sooner
  }

  /** Goes on beyond this key; the entry that has it, or null. */
  @Nullable V upTo(K key) {
    while (true) {
      K at = key();
      if (at == null) {
        return null;
      }
      if (at.equals(key)) {
        return table.at(next++);
      }
      if (at.compareTo(key) > 0) {
        return null;
      }
      next++;
    }
  }
}
