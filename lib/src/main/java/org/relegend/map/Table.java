package org.relegend.map;

import java.util.AbstractCollection;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * An immutable collection of keyed values, in the order of their keys. Finding takes O(log n);
 * {@link #with} and {@link #without} copy one array of references, so an edit of a map with 10,000
 * parts stays far below a millisecond, and the old table lives on for undo.
 */
public final class Table<K extends Comparable<? super K>, V extends Keyed<K>>
    extends AbstractCollection<V> {
  private final Object[] values;

  private Table(Object[] values) {
    this.values = values;
  }

  public static <K extends Comparable<? super K>, V extends Keyed<K>> Table<K, V> empty() {
    return new Table<>(new Object[0]);
  }

  /**
   * A table of these values.
   *
   * @throws IllegalArgumentException where two of them have one key
   */
  public static <K extends Comparable<? super K>, V extends Keyed<K>> Table<K, V> of(
      Collection<? extends V> values) {
    List<V> sorted = new ArrayList<>(values);
    if (!isAscending(sorted)) {
      sorted.sort((a, b) -> a.key().compareTo(b.key()));
      refuseRepeated(sorted);
    }
    return new Table<>(sorted.toArray());
  }

  /** As files have them: then one comparison each will do, and no two have one key. */
  private static <K extends Comparable<? super K>, V extends Keyed<K>> boolean isAscending(
      List<V> values) {
    @Nullable K before = null;
    for (V value : values) {
      K key = value.key();
      if (before != null && before.compareTo(key) >= 0) {
        return false;
      }
      before = key;
    }
    return true;
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> void refuseRepeated(
      List<V> sorted) {
    for (int i = 1; i < sorted.size(); i++) {
      if (sorted.get(i - 1).key().compareTo(sorted.get(i).key()) == 0) {
        throw new IllegalArgumentException(
            "\"" + sorted.get(i).key() + "\" stands twice where it may stand once");
      }
    }
  }

  public Optional<V> find(K key) {
    return Optional.ofNullable(orNull(key));
  }

  public boolean has(K key) {
    return index(key) >= 0;
  }

  private @Nullable V orNull(K key) {
    int index = index(key);
    return index < 0 ? null : at(index);
  }

  /** This table with the value added, or put in the place of the one that had its key. */
  public Table<K, V> with(V value) {
    int index = index(value.key());
    if (index >= 0) {
      Object[] copy = values.clone();
      copy[index] = value;
      return new Table<>(copy);
    }
    int gap = -index - 1;
    Object[] copy = new Object[values.length + 1];
    System.arraycopy(values, 0, copy, 0, gap);
    copy[gap] = value;
    System.arraycopy(values, gap, copy, gap + 1, values.length - gap);
    return new Table<>(copy);
  }

  /** This table with all these values added or put in the place of those with their keys. */
  public Table<K, V> withAll(Collection<? extends V> added) {
    if (added.size() < 8) {
      Table<K, V> result = this;
      for (V value : added) {
        result = result.with(value);
      }
      return result;
    }
    TreeMap<K, V> all = new TreeMap<>();
    forEach(value -> all.put(value.key(), value));
    added.forEach(value -> all.put(value.key(), value));
    return new Table<>(all.values().toArray());
  }

  public Table<K, V> without(K key) {
    int index = index(key);
    if (index < 0) {
      return this;
    }
    Object[] copy = new Object[values.length - 1];
    System.arraycopy(values, 0, copy, 0, index);
    System.arraycopy(values, index + 1, copy, index, copy.length - index);
    return new Table<>(copy);
  }

  public V at(int index) {
    @SuppressWarnings("unchecked") // only values of this type are ever put in
    V value = (V) values[index];
    return value;
  }

  private int index(K key) {
    int low = 0;
    int high = values.length - 1;
    while (low <= high) {
      int middle = (low + high) >>> 1;
      int order = at(middle).key().compareTo(key);
      if (order == 0) {
        return middle;
      }
      if (order < 0) {
        low = middle + 1;
      } else {
        high = middle - 1;
      }
    }
    return -low - 1;
  }

  @Override
  public Iterator<V> iterator() {
    return new Iterator<>() {
      private int next;

      @Override
      public boolean hasNext() {
        return next < values.length;
      }

      @Override
      public V next() {
        if (!hasNext()) {
          throw new NoSuchElementException();
        }
        return at(next++);
      }
    };
  }

  @Override
  public int size() {
    return values.length;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Table<?, ?> table && Arrays.equals(values, table.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }
}
