package org.relegend.map;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One table of the board map: its edits, what its entries speak of, and how they are merged. */
public abstract class MapTable<K extends Comparable<? super K>, V extends Keyed<K>>
    extends DocumentTable<BoardMap, K, V> {
  MapTable(int position, String word) {
    super(position, word);
  }

  /** The edit that adds an entry, or puts it in the place of the one with its key. */
  public final PutEntry<K, V> put(V entry) {
    return new PutEntry<>(this, entry);
  }

  /** The edits after which the table has this very entry. */
  public final List<Edit> exactly(V entry) {
    return addsToKnown() ? List.of(remove(entry.key()), put(entry)) : List.of(put(entry));
  }

  /** The edit that takes an entry away, with what speaks of it. */
  public final RemoveEntry<K, V> remove(K key) {
    return new RemoveEntry<>(this, key);
  }

  /** The entries that these edits put into this table, steps of groups not looked into. */
  public final List<V> putBy(Collection<? extends Edit> edits) {
    return edits.stream()
        .filter(edit -> edit instanceof PutEntry<?, ?> put && put.table() == this)
        .map(
            edit -> {
              @SuppressWarnings("unchecked") // its table is this one
              PutEntry<K, V> put = (PutEntry<K, V>) edit;
              return put.entry();
            })
        .toList();
  }

  /** The keys that these edits remove from this table, steps of groups not looked into. */
  public final List<K> removedBy(Collection<? extends Edit> edits) {
    return edits.stream()
        .filter(edit -> edit instanceof RemoveEntry<?, ?> removal && removal.table() == this)
        .map(
            edit -> {
              @SuppressWarnings("unchecked") // its table is this one
              RemoveEntry<K, V> removal = (RemoveEntry<K, V>) edit;
              return removal.key();
            })
        .toList();
  }

  /** All that an entry speaks of. */
  public List<EntryRef> references(V entry) {
    return List.of();
  }

  /** What an entry goes with when that is removed. */
  public List<EntryRef> goesWith(V entry) {
    return references(entry);
  }

  /** Fields that are one statement in a merge: the evidence speaks of all of them together. */
  public Set<String> claim() {
    return Set.of();
  }

  /** Fields that are lists merged entry by entry, with the field that tells their entries apart. */
  public Map<String, String> lists() {
    return Map.of();
  }

  /** The entry with other ids. */
  public V renamed(V entry, IdRenames renames) {
    return entry;
  }
}
