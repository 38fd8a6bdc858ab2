package org.relegend.share;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.Keyed;
import org.relegend.map.Placement;
import org.relegend.map.TwinPair;

/** Gives the entries of a version the ids that nets and pictures have in the merged map. */
final class NetNames {
  private NetNames() {}

  static <K extends Comparable<? super K>, V extends Keyed<K>> BoardMap renamed(
      Rule<K, V> rule, BoardMap map, Renames renames) {
    return rule.renamed(map, renames, NetNames::fitting);
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
      V moved = (V) Rules.at(label, new Renames(), ordinal);
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
