package org.relegend.share;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.relegend.map.BoardMap;
import org.relegend.map.Keyed;
import org.relegend.map.Table;
import org.relegend.store.Json;
import org.relegend.store.Shelf;

/**
 * How the entries of one table are merged.
 *
 * @param claim fields that are one statement: the evidence speaks of all of them together
 * @param lists fields that are lists merged entry by entry, with the field that tells their entries
 *     apart
 * @param refs what an entry speaks of
 * @param renamed the entry with other ids
 */
record Rule<K extends Comparable<? super K>, V extends Keyed<K>>(
    Shelf<K, V> shelf,
    Set<String> claim,
    Map<String, String> lists,
    Function<V, List<Ref>> refs,
    BiFunction<V, Renames, V> renamed) {
  String table() {
    return shelf.name();
  }

  Table<K, V> of(BoardMap map) {
    return shelf.of(map);
  }

  /** The table with other ids; two entries that come to have one key are told to the clash. */
  BoardMap renamed(BoardMap map, Renames renames, BiFunction<Map<K, V>, V, V> clash) {
    Table<K, V> table = of(map);
    Map<K, V> changed = new TreeMap<>();
    List<V> moved = new ArrayList<>();
    for (V entry : table) {
      V now = renamed.apply(entry, renames);
      if (now.key().compareTo(entry.key()) == 0) {
        changed.put(now.key(), now);
      } else {
        moved.add(now);
      }
    }
    for (V entry : moved) {
      V fitting = changed.containsKey(entry.key()) ? clash.apply(changed, entry) : entry;
      changed.put(fitting.key(), fitting);
    }
    Table<K, V> result = Table.of(changed.values());
    return result.equals(table) ? map : shelf.in(map, result);
  }

  Json.Obj json(V entry) {
    return shelf.json(entry);
  }

  /** The entry under such a key as its whole JSON text; empty where there is none. */
  String whole(BoardMap map, String keyText) {
    Optional<V> entry = of(map).find(shelf.key(keyText));
    return entry.map(found -> json(found).compact()).orElse("");
  }

  BoardMap with(BoardMap map, Collection<V> entries) {
    return shelf.in(map, Table.of(entries));
  }
}
