package org.relegend.share;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.IdRenames;
import org.relegend.map.Keyed;
import org.relegend.map.MapTable;
import org.relegend.map.MapTables;
import org.relegend.map.Placement;
import org.relegend.map.Table;
import org.relegend.map.TwinPair;

/** Gives the entries of a version the ids that nets and pictures have in the merged map. */
final class MergedIds {
  private MergedIds() {}

  /** The map with other ids in all its tables. */
  static BoardMap renamed(BoardMap map, IdRenames renames) {
    BoardMap result = map;
    for (MapTable<?, ?> table : MapTables.ALL) {
      result = renamed(table, result, renames);
    }
    return result;
  }

  static <K extends Comparable<? super K>, V extends Keyed<K>> BoardMap renamed(
      MapTable<K, V> table, BoardMap map, IdRenames renames) {
    Map<K, V> changed = new TreeMap<>();
    List<V> moved = new ArrayList<>();
    for (V entry : table.of(map)) {
      V now = table.renamed(entry, renames);
      if (now.key().compareTo(entry.key()) == 0) {
        changed.put(now.key(), now);
      } else {
        moved.add(now);
      }
    }
    for (V entry : moved) {
      V fitting = changed.containsKey(entry.key()) ? fitting(changed, entry) : entry;
      changed.put(fitting.key(), fitting);
    }
    Table<K, V> result = Table.of(changed.values());
    return result.equals(table.of(map)) ? map : map.with(table, result);
  }

  /**
   * Where two entries come to have one key: labels of nets that are one now stand side by side, as
   * joining the nets by hand would have it; twins that are one pair now have the evidence of both.
   */
  private static <K, V> V fitting(Map<K, V> there, V added) {
    if (added instanceof Placement label) {
      int ordinal = label.ordinal();
      while (there.containsKey(new Placement.Key(label.picture(), label.subject(), ordinal))) {
        ordinal++;
      }
      @SuppressWarnings("unchecked") // a placement like the one that came in
      V moved = (V) label.of(label.picture(), label.subject(), ordinal);
      return moved;
    }
    @SuppressWarnings("unchecked") // the key of this very entry
    V known = there.getOrDefault((K) ((Keyed<?>) added).key(), added);
    if (known instanceof TwinPair first && added instanceof TwinPair second) {
      @SuppressWarnings("unchecked") // twins for twins
      V both = (V) together(first, second);
      return both;
    }
    return known;
  }

  private static TwinPair together(TwinPair known, TwinPair added) {
    List<Attestation> evidence = new ArrayList<>(known.evidence());
    added.evidence().stream().filter(one -> !evidence.contains(one)).forEach(evidence::add);
    return new TwinPair(known.a(), known.b(), evidence);
  }
}
