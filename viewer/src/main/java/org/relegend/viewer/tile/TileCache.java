package org.relegend.viewer.tile;

import java.awt.image.BufferedImage;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Tiles in memory, together never more than a bound in bytes: those not asked for the longest go
 * first. One bound for all pictures, and no division of it, since else a picture alone on the
 * screen could use only its share. Any thread may call it.
 */
final class TileCache {
  /** What tiles are kept under: which picture, and which tile of it. */
  private record Slot(Object picture, TileKey key) {}

  private final long maxBytes;
  private final Map<Slot, BufferedImage> tiles = new LinkedHashMap<>(64, 0.75f, true);
  private long bytes;

  TileCache(long maxBytes) {
    if (maxBytes < 1) {
      throw new IllegalArgumentException("a cache of %d bytes".formatted(maxBytes));
    }
    this.maxBytes = maxBytes;
  }

  synchronized Optional<BufferedImage> get(Object picture, TileKey key) {
    return Optional.ofNullable(tiles.get(new Slot(picture, key)));
  }

  synchronized void put(Object picture, TileKey key, BufferedImage image) {
    BufferedImage before = tiles.put(new Slot(picture, key), image);
    bytes += weight(image) - (before == null ? 0 : weight(before));
    Iterator<BufferedImage> oldest = tiles.values().iterator();
    while (bytes > maxBytes && oldest.hasNext()) {
      bytes -= weight(oldest.next());
      oldest.remove();
    }
  }

  synchronized void forget(Object picture) {
    Iterator<Map.Entry<Slot, BufferedImage>> all = tiles.entrySet().iterator();
    while (all.hasNext()) {
      Map.Entry<Slot, BufferedImage> entry = all.next();
      if (entry.getKey().picture().equals(picture)) {
        bytes -= weight(entry.getValue());
        all.remove();
      }
    }
  }

  synchronized long bytes() {
    return bytes;
  }

  /** Bytes of its pixels; tiles have four a pixel. */
  private static long weight(BufferedImage image) {
    return 4L * image.getWidth() * image.getHeight();
  }
}
