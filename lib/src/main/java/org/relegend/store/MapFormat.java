package org.relegend.store;

import java.nio.file.Path;
import org.relegend.map.BoardMap;
import org.relegend.map.HazardZone;

/**
 * A board map as the text of map.json: UTF-8, line feeds, one order of fields and entities, so that
 * equal maps give equal bytes. The first field, {@code format}, counts the form of the file, not
 * the program's version. A change of the form that old programs would misread makes it one more.
 *
 * <p>Each map is written in the lowest form that can say all of it, so that older programs read it
 * as long as they can:
 *
 * <ol>
 *   <li>the first
 *   <li>hazard zones of the kind {@code substance}; what the first form says stands there unchanged
 * </ol>
 */
public final class MapFormat {
  /** The newest form: all up to it are read. */
  public static final int CURRENT = 2;

  static final DocumentFormat<BoardMap> FORMAT =
      new DocumentFormat<>("board map", "map", MapFolder.MAP_FILE, CURRENT, MapShapes.map());

  private MapFormat() {}

  /** The form that a map is written in. */
  static int of(BoardMap map) {
    return map.zones().stream().anyMatch(zone -> zone.kind() == HazardZone.Kind.SUBSTANCE) ? 2 : 1;
  }

  /** The map as the bytes of its file. */
  public static byte[] write(BoardMap map) {
    return FORMAT.write(map);
  }

  /**
   * Digest of the map as it is written: equal for equal maps, whatever file they were read from.
   */
  public static String digest(BoardMap map) {
    return Digests.sha256(write(map));
  }

  /** The JSON Schema (2020-12) of the current form, as text. */
  public static String schema() {
    return DocumentFormat.schema("map.schema.json");
  }

  /**
   * Reads a map. Things that refer to something missing are read as they are: the checks find them.
   *
   * @param path where the bytes are from, for messages
   * @throws StoreException where this is no map, or one of a newer form
   */
  public static BoardMap read(byte[] bytes, Path path) throws StoreException {
    return FORMAT.read(bytes, path);
  }
}
