package org.relegend.share;

import java.util.List;
import org.relegend.map.BoardMap;
import org.relegend.map.Clash;

/**
 * Two maps as one.
 *
 * @param map with the clashes in it, and with mine where a clash is undecided
 * @param clashes those that this merge found
 */
public record MergeResult(BoardMap map, List<Clash> clashes) {
  public MergeResult {
    clashes = List.copyOf(clashes);
  }
}
