package org.relegend.map;

/**
 * A document that holds most of what it knows in tables.
 *
 * @param <D> the document itself
 */
public interface TabledDocument<D extends TabledDocument<D>> {
  Tables<D> tables();

  /** The document with these tables in the place of its own. */
  D withTables(Tables<D> changed);

  default <K extends Comparable<? super K>, V extends Keyed<K>> Table<K, V> get(
      DocumentTable<D, K, V> table) {
    return tables().get(table);
  }

  /** The document with this table in the place of the one it has there. */
  default <K extends Comparable<? super K>, V extends Keyed<K>> D with(
      DocumentTable<D, K, V> table, Table<K, V> changed) {
    return withTables(tables().with(table, changed));
  }
}
