package org.relegend.share;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.relegend.map.Clash;

/** Puts cells together that must be decided together. */
final class Bundles {
  private final Map<Ref, Clash.Cell> cells = new LinkedHashMap<>();
  private final Map<Ref, Ref> parent = new HashMap<>();

  /**
   * Adds a cell.
   *
   * @param self what the cell is about
   * @param with what it is to be decided together with
   */
  void add(Ref self, Clash.Cell cell, List<Ref> with) {
    cells.putIfAbsent(self, cell);
    for (Ref ref : with) {
      Ref a = root(self);
      Ref b = root(ref);
      if (!a.equals(b)) {
        parent.put(a, b);
      }
    }
  }

  private Ref root(Ref ref) {
    Ref at = ref;
    for (Ref up = parent.get(at); up != null; up = parent.get(at)) {
      at = up;
    }
    return at;
  }

  List<List<Clash.Cell>> all() {
    Map<Ref, List<Clash.Cell>> byRoot = new LinkedHashMap<>();
    cells.forEach(
        (ref, cell) -> byRoot.computeIfAbsent(root(ref), r -> new ArrayList<>()).add(cell));
    return new ArrayList<>(byRoot.values());
  }
}
