package org.relegend.map;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * All tables of one document. A value: {@link #with} gives new ones that share all tables but one.
 *
 * @param <D> the document
 */
public final class Tables<D extends TabledDocument<D>> {
  private final Table<?, ?>[] byPosition;

  private Tables(Table<?, ?>[] byPosition) {
    this.byPosition = byPosition;
  }

  /** So many tables with nothing in them. */
  public static <D extends TabledDocument<D>> Tables<D> empty(int count) {
    Table<?, ?>[] tables = new Table<?, ?>[count];
    Arrays.fill(tables, Table.empty());
    return new Tables<>(tables);
  }

  public <K extends Comparable<? super K>, V extends Keyed<K>> Table<K, V> get(
      DocumentTable<D, K, V> of) {
    @SuppressWarnings("unchecked") // with() lets nothing else come to this position
    Table<K, V> table = (Table<K, V>) byPosition[of.position()];
    return table;
  }

  public <K extends Comparable<? super K>, V extends Keyed<K>> Tables<D> with(
      DocumentTable<D, K, V> of, Table<K, V> changed) {
    Table<?, ?>[] copy = byPosition.clone();
    copy[of.position()] = changed;
    return new Tables<>(copy);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Tables<?> tables && Arrays.equals(byPosition, tables.byPosition);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(byPosition);
  }
}
