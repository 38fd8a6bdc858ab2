package org.relegend.map;

import java.util.List;

/**
 * Applies runs of edits that put into one table in one pass: an import of 50,000 parts then copies
 * the table of parts once and not 50,000 times. The outcome is that of one edit after the other.
 */
final class EditBatches {
  private EditBatches() {}

  static BoardMap apply(List<Edit> steps, BoardMap map) throws EditRefusedException {
    BoardMap result = map;
    int from = 0;
    while (from < steps.size()) {
      int end = from + 1;
      if (steps.get(from) instanceof PutEntry<?, ?> first) {
        while (end < steps.size() && isPutInto(first.table(), steps.get(end))) {
          end++;
        }
        result = put(first.table(), steps.subList(from, end), result);
      } else {
        result = steps.get(from).applyTo(result);
      }
      from = end;
    }
    return result;
  }

  private static boolean isPutInto(MapTable<?, ?> table, Edit edit) {
    return edit instanceof PutEntry<?, ?> put && put.table() == table;
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> BoardMap put(
      MapTable<K, V> table, List<Edit> run, BoardMap map) throws EditRefusedException {
    return table.put(map, table.putBy(run));
  }
}
