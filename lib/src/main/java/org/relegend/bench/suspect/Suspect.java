package org.relegend.bench.suspect;

import java.util.List;
import org.relegend.map.PartId;

/**
 * A part under suspicion.
 *
 * @param score its share of all suspicion, 0 to 1
 * @param reasons in plain words, the weightiest first
 */
public record Suspect(PartId part, double score, List<String> reasons) {
  public Suspect {
    reasons = List.copyOf(reasons);
  }
}
