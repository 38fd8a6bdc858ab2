package org.relegend.store;

import java.util.ArrayList;
import java.util.List;
import org.relegend.map.DocumentTable;
import org.relegend.map.Keyed;
import org.relegend.map.Table;
import org.relegend.map.TabledDocument;
import org.relegend.map.Tables;
import org.relegend.store.JsonShape.Field;
import org.relegend.store.JsonShape.Values;

/** The tables of a document as fields of its object: one list each, left out while empty. */
final class TableFields<D extends TabledDocument<D>> {
  /** A table and its field. */
  private record Entry<
      D extends TabledDocument<D>, K extends Comparable<? super K>, V extends Keyed<K>>(
      DocumentTable<D, K, V> table, Field<D, Table<K, V>> field) {
    Tables<D> readInto(Tables<D> tables, Values values) {
      return tables.with(table, values.get(field));
    }
  }

  private final JsonShape<D> shape;
  private final List<Entry<D, ?, ?>> entries = new ArrayList<>();

  TableFields(JsonShape<D> shape) {
    this.shape = shape;
  }

  <K extends Comparable<? super K>, V extends Keyed<K>> TableFields<D> add(
      DocumentTable<D, K, V> table, Codec<V> entry) {
    var field = shape.optional(table.word(), Codecs.table(entry), Table.empty(), table::of);
    entries.add(new Entry<>(table, field));
    return this;
  }

  /** The tables that were read. */
  Tables<D> of(Values values) {
    Tables<D> tables = Tables.empty(entries.size());
    for (Entry<D, ?, ?> entry : entries) {
      tables = entry.readInto(tables, values);
    }
    return tables;
  }
}
