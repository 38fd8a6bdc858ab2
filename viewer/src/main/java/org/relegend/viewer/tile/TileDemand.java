package org.relegend.viewer.tile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Which tiles of one picture are wanted, and which are being made. The viewer that asked last comes
 * first, and what nobody wants any more is forgotten. Any thread may call it.
 */
final class TileDemand {
  private final Map<Object, List<TileKey>> wanted = new LinkedHashMap<>();
  private final Set<TileKey> underWay = new HashSet<>();

  /** Replaces what a viewer wanted before. */
  synchronized void want(Object viewer, List<TileKey> tiles) {
    wanted.remove(viewer);
    if (!tiles.isEmpty()) {
      wanted.put(viewer, List.copyOf(tiles));
    }
  }

  /**
   * Takes the most urgent tile that passes and that nobody makes yet. Each one taken must be given
   * back by {@link #done}.
   */
  synchronized Optional<TileKey> take(Predicate<TileKey> makeable) {
    Optional<TileKey> next =
        inOrder().stream().filter(key -> !underWay.contains(key)).filter(makeable).findFirst();
    next.ifPresent(underWay::add);
    return next;
  }

  /** Takes all that pass and that nobody makes yet. */
  synchronized List<TileKey> takeAll(Predicate<TileKey> makeable) {
    List<TileKey> all =
        inOrder().stream()
            .filter(key -> !underWay.contains(key))
            .filter(makeable)
            .distinct()
            .toList();
    underWay.addAll(all);
    return all;
  }

  synchronized void done(TileKey key) {
    underWay.remove(key);
  }

  /** Nobody wants anything any more. */
  synchronized void clear() {
    wanted.clear();
  }

  /** Newest viewer first. */
  private List<TileKey> inOrder() {
    List<List<TileKey>> lists = new ArrayList<>(wanted.values());
    List<TileKey> all = new ArrayList<>();
    for (int i = lists.size() - 1; i >= 0; i--) {
      all.addAll(lists.get(i));
    }
    return all;
  }
}
