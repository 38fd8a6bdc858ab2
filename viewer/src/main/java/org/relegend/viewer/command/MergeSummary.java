package org.relegend.viewer.command;

import java.util.ArrayList;
import java.util.List;
import org.relegend.map.BoardMap;
import org.relegend.map.Keyed;
import org.relegend.map.Table;

/** What a merged map has that one of the two hadn't, in words. */
final class MergeSummary {
  private final List<String> lines = new ArrayList<>();

  private MergeSummary() {}

  static String text(BoardMap without, BoardMap merged) {
    MergeSummary taken = new MergeSummary();
    taken.count("pictures", without.pictures(), merged.pictures());
    taken.count("parts", without.parts(), merged.parts());
    taken.count("nets", without.nets(), merged.nets());
    taken.count("placements", without.placements(), merged.placements());
    taken.count("twins", without.twins(), merged.twins());
    taken.count("hazard zones", without.zones(), merged.zones());
    taken.count("line-ups", without.lineUps(), merged.lineUps());
    taken.count("differences from the drawing", without.discrepancies(), merged.discrepancies());
    return taken.lines.isEmpty() ? "nothing" : String.join("; ", taken.lines);
  }

  private <K extends Comparable<? super K>, V extends Keyed<K>> void count(
      String what, Table<K, V> without, Table<K, V> merged) {
    List<String> counts = new ArrayList<>();
    long added = merged.stream().filter(one -> !without.has(one.key())).count();
    long gone = without.stream().filter(one -> !merged.has(one.key())).count();
    long changed =
        merged.stream()
            .filter(one -> without.find(one.key()).map(old -> !old.equals(one)).orElse(false))
            .count();
    add(counts, added, "new");
    add(counts, changed, "changed");
    add(counts, gone, "removed");
    if (!counts.isEmpty()) {
      lines.add(what + ": " + String.join(", ", counts));
    }
  }

  private static void add(List<String> counts, long count, String how) {
    if (count > 0) {
      counts.add(count + " " + how);
    }
  }
}
