package org.relegend.share;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.relegend.map.Clash;
import org.relegend.map.EntryRef;

/** Puts cells together that must be decided together. */
final class JointClashes {
  private final Map<EntryRef, Clash.Cell> cells = new LinkedHashMap<>();
  private final Map<EntryRef, EntryRef> parent = new HashMap<>();

  /**
   * Adds a cell.
   *
   * @param self what the cell is about
   * @param with what it is to be decided together with
   */
  void add(EntryRef self, Clash.Cell cell, List<EntryRef> with) {
    cells.putIfAbsent(self, cell);
    for (EntryRef ref : with) {
      EntryRef a = root(self);
      EntryRef b = root(ref);
      if (!a.equals(b)) {
        parent.put(a, b);
      }
    }
  }

  private EntryRef root(EntryRef ref) {
    EntryRef at = ref;
    for (EntryRef up = parent.get(at); up != null; up = parent.get(at)) {
      at = up;
    }
    return at;
  }

  List<List<Clash.Cell>> all() {
    Map<EntryRef, List<Clash.Cell>> byRoot = new LinkedHashMap<>();
    cells.forEach(
        (ref, cell) -> byRoot.computeIfAbsent(root(ref), r -> new ArrayList<>()).add(cell));
    return new ArrayList<>(byRoot.values());
  }
}
