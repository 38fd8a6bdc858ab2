package org.relegend.share;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.map.BoardMap;
import org.relegend.map.Picture;
import org.relegend.store.Digests;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import org.relegend.store.StoreException.Kind;

/** Puts a map and the files of its pictures into a folder of their own. */
public final class MapCopy {
  private MapCopy() {}

  /**
   * Writes a new folder with the map and those of its pictures that are in one of the others, found
   * by their digests.
   *
   * @return the pictures whose files were nowhere found
   * @throws StoreException where the folder can't be written; nothing of it is left then
   */
  public static List<Picture> write(BoardMap map, Path target, List<MapFolder> from)
      throws StoreException {
    try (StagedFolder staging = StagedFolder.of(target)) {
      List<Picture> missing = new ArrayList<>();
      for (Picture picture : map.pictures()) {
        Path place = staging.folder().resolve(picture.file());
        if (!Files.exists(place)) {
          Optional<Path> source = find(picture, from);
          if (source.isPresent()) {
            copy(source.get(), place);
          } else {
            missing.add(picture);
          }
        }
      }
      MapFolder.create(staging.folder(), map).close();
      staging.commit();
      return missing;
    }
  }

  private static Optional<Path> find(Picture picture, List<MapFolder> from) throws StoreException {
    for (MapFolder folder : from) {
      for (Picture candidate : folder.map().pictures()) {
        Path file = folder.fileOf(candidate);
        if (candidate.sha256().equals(picture.sha256())
            && Files.isRegularFile(file)
            && Digests.sha256(file).equals(picture.sha256())) {
          return Optional.of(file);
        }
      }
    }
    return Optional.empty();
  }

  private static void copy(Path source, Path place) throws StoreException {
    try {
      Path parent = place.getParent();
      if (parent != null) {
        Files.createDirectories(parent);
      }
      Files.copy(source, place);
    } catch (IOException e) {
      throw new StoreException(
          Kind.FAILED, source, "this picture can't be copied (%s)".formatted(e.getMessage()), e);
    }
  }
}
