package org.relegend.store;

import static org.relegend.store.Codecs.list;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.relegend.map.BoardMap;
import org.relegend.map.Keyed;
import org.relegend.map.Table;

/** One of the tables of a map, and how what changed in it is written. */
final class Shelf<K extends Comparable<? super K>, V extends Keyed<K>> {
  /** What of one table changed: values added or changed, and keys of those removed. */
  record Change<K, V>(List<V> put, List<K> removed) {
    boolean none() {
      return put.isEmpty() && removed.isEmpty();
    }
  }

  private final String name;
  private final Function<BoardMap, Table<K, V>> table;
  private final BiFunction<BoardMap, Table<K, V>, BoardMap> with;
  private final Codec<Change<K, V>> codec;

  Shelf(
      String name,
      Function<BoardMap, Table<K, V>> table,
      BiFunction<BoardMap, Table<K, V>, BoardMap> with,
      Codec<V> value,
      Codec<K> key) {
    this.name = name;
    this.table = table;
    this.with = with;
    Shape<Change<K, V>> s = new Shape<>();
    var put = s.optional("put", list(value), List.of(), Change::put);
    var removed = s.optional("remove", list(key), List.of(), Change::removed);
    this.codec = s.madeBy(v -> new Change<>(v.get(put), v.get(removed)));
  }

  String name() {
    return name;
  }

  Codec<Change<K, V>> codec() {
    return codec;
  }

  Change<K, V> between(BoardMap before, BoardMap after) {
    Table<K, V> old = table.apply(before);
    Table<K, V> young = table.apply(after);
    List<V> put = new ArrayList<>();
    for (V value : young) {
      if (!old.find(value.key()).filter(value::equals).isPresent()) {
        put.add(value);
      }
    }
    List<K> removed = new ArrayList<>();
    for (V value : old) {
      if (!young.has(value.key())) {
        removed.add(value.key());
      }
    }
    return new Change<>(put, removed);
  }

  UnaryOperator<BoardMap> made(Change<K, V> change) {
    return map -> {
      Table<K, V> result = table.apply(map);
      for (K key : change.removed()) {
        result = result.without(key);
      }
      return with.apply(map, result.withAll(change.put()));
    };
  }
}
