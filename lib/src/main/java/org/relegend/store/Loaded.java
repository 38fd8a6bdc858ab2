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
 * @param source digest of the file it was read from
 * @param onDisk digest of map.json; empty where there is none
 * @param damaged whether map.json is there and can't be read, so that the map is the backup's
 */
record Loaded(BoardMap map, String source, String onDisk, boolean damaged, List<String> notices) {
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
    Optional<byte[]> bytes = bytes(file);
    return bytes.isPresent() ? fromFile(file, bytes.get()) : withoutFile(file, folder);
  }

  private static Loaded fromFile(Path file, byte[] bytes) throws StoreException {
    String digest = Digests.sha256(bytes);
    try {
      return new Loaded(MapFormat.read(bytes, file), digest, digest, false, List.of());
    } catch (StoreException e) {
      if (e.kind() != Kind.BAD_CONTENT) {
        throw e;
      }
      return fromBackup(
              file,
              digest,
              "map.json can't be read, so the map is the one saved before it, from map.json.bak."
                  + " The trouble: "
                  + e.getMessage())
          .orElseThrow(() -> e);
    }
  }

  private static Loaded withoutFile(Path file, Path folder) throws StoreException {
    return fromBackup(file, "", "There was no map.json: the map is from map.json.bak.")
        .orElseThrow(
            () ->
                new StoreException(
                    Kind.MISSING,
                    folder,
                    "there is no map.json in this folder, so it is no board map. Check the path, or"
                        + " make a map there."));
  }

  private static Optional<Loaded> fromBackup(Path file, String onDisk, String notice) {
    Path backup = AtomicFile.backup(file);
    try {
      Optional<byte[]> bytes = bytes(backup);
      if (bytes.isEmpty()) {
        return Optional.empty();
      }
      BoardMap map = MapFormat.read(bytes.get(), backup);
      String source = Digests.sha256(bytes.get());
      return Optional.of(new Loaded(map, source, onDisk, !onDisk.isEmpty(), List.of(notice)));
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
