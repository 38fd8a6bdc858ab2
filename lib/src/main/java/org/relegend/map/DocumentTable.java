package org.relegend.map;

import java.util.Collection;
import java.util.List;

/**
 * One table of a document as a value: its word, and what the two edits that every table has, put
 * and remove, mean in it. Of each document there is one list of these; files, the journal, the
 * rules of merging and the names of edits follow from it.
 *
 * @param <D> the document
 */
public abstract class DocumentTable<
    D extends TabledDocument<D>, K extends Comparable<? super K>, V extends Keyed<K>> {
  private final int position;
  private final String word;

  /**
   * A table.
   *
   * @param position where it stands in the list of its document's tables
   * @param word what it is called in the file
   */
  protected DocumentTable(int position, String word) {
    this.position = position;
    this.word = word;
  }

  /** What it is called in the file. */
  public final String word() {
    return word;
  }

  final int position() {
    return position;
  }

  public final Table<K, V> of(D document) {
    return document.get(this);
  }

  /** What putting an entry does, for the undo menu. */
  protected abstract String putLabel(D document, V entry);

  /** What removing an entry does, for the undo menu. */
  protected abstract String removeLabel(D document, K key);

  /**
   * Refuses an entry that the document isn't ready for.
   *
   * @throws EditRefusedException with what is missing
   */
  protected void check(D document, V entry) throws EditRefusedException {}

  /** The document with what the entries need beside them. */
  protected D prepared(D document, Collection<V> entries) {
    return document;
  }

  /** Whether putting an entry adds to the one with its key, instead of taking its place. */
  public boolean addsToKnown() {
    return false;
  }

  /** What stands after an entry is put where there is one with its key. */
  protected V joined(V known, V given) {
    return given;
  }

  /**
   * The document without what goes with an entry that is removed.
   *
   * @throws EditRefusedException where something must be moved away first
   */
  protected D leaving(D document, K key) throws EditRefusedException {
    return document;
  }

  /** The document with these entries put, which copies the table once. */
  public final D put(D document, List<V> entries) throws EditRefusedException {
    for (V entry : entries) {
      check(document, entry);
    }
    D ready = prepared(document, entries);
    return ready.with(this, addsToKnown() ? added(of(ready), entries) : of(ready).withAll(entries));
  }

  private Table<K, V> added(Table<K, V> table, List<V> entries) {
    Table<K, V> result = table;
    for (V entry : entries) {
      result = result.with(result.find(entry.key()).map(k -> joined(k, entry)).orElse(entry));
    }
    return result;
  }

  /** The document without this entry and what goes with it. */
  public final D remove(D document, K key) throws EditRefusedException {
    D rest = leaving(document, key);
    return rest.with(this, of(rest).without(key));
  }

  @Override
  public final String toString() {
    return word;
  }
}
