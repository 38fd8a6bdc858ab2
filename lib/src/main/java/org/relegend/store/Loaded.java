package org.relegend.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.relegend.map.BoardMap;
import org.relegend.store.StoreException.Kind;

/**
 * A map as it was found in its folder.
 *
 * @param onDisk digest of map.json; empty where there is none
 * @param damaged whether map.json is there and can't be read, so that the map is the backup's
 */
record Loaded(BoardMap map, String onDisk, boolean damaged, List<String> notices) {
  static void requireFolder(Path folder) throws StoreException {
    if (!Files.isDirectory(folder)) {
      throw new StoreException(
          Kind.MISSING,
          folder,
          Files.exists(folder)
              ? "this is no folder. Name the folder that the map is in."
              : "there is no such folder. Check the path.");
    }
  }

  /** Reads map.json, or the backup where that is missing or damaged, and tells so. */
  static Loaded from(Path folder) throws StoreException {
    Path file = folder.resolve(MapFolder.MAP_FILE);
    Path backup = new AtomicFile(Disk.REAL, file).backup();
    Optional<byte[]> bytes = bytes(file);
    if (bytes.isEmpty()) {
      BoardMap kept =
          backup(backup)
              .orElseThrow(
                  () ->
                      new StoreException(
                          Kind.MISSING,
                          folder,
                          "there is no map.json in this folder, so it is no board map. Check the"
                              + " path, or make a map there."));
      return new Loaded(
          kept, "", false, List.of("There was no map.json: the map is from map.json.bak."));
    }
    String digest = Digests.sha256(bytes.get());
    try {
      return new Loaded(MapFormat.read(bytes.get(), file), digest, false, List.of());
    } catch (StoreException e) {
      if (e.kind() != Kind.BAD_CONTENT) {
        throw e;
      }
      BoardMap kept = backup(backup).orElseThrow(() -> e);
      return new Loaded(
          kept,
          digest,
          true,
          List.of(
              "map.json can't be read, so the map is the one saved before it, from map.json.bak."
                  + " The trouble: "
                  + e.getMessage()));
    }
  }

  private static Optional<BoardMap> backup(Path file) {
    try {
      Optional<byte[]> bytes = bytes(file);
      return bytes.isEmpty() ? Optional.empty() : Optional.of(MapFormat.read(bytes.get(), file));
    } catch (StoreException e) {
      return Optional.empty(); // then the trouble with the file itself is told
    }
  }

  /** The content of a file, if there is one. */
  static Optional<byte[]> bytes(Path file) throws StoreException {
    try {
      if (Files.size(file) > MapFormat.MAX_BYTES) {
        throw new StoreException(
            Kind.BAD_CONTENT,
            file,
            "the file has more than %d MB, which no map has. Restore it from a copy."
                .formatted(MapFormat.MAX_BYTES >> 20));
      }
      return Optional.of(Files.readAllBytes(file));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw DiskTroubles.reading(e, file);
    }
  }
}
