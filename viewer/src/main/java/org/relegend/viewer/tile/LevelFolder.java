package org.relegend.viewer.tile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The folder where the levels of pictures are kept between runs, under the digest of the picture's
 * file. All in it can be made anew, so it may be deleted at any time.
 */
final class LevelFolder {
  private static final String ENDING = ".levels";
  private static final String UNFINISHED = ".part";

  private final Path folder;
  private final long maxBytes;
  private final Clock clock;

  LevelFolder(Path folder, long maxBytes, Clock clock) {
    this.folder = folder;
    this.maxBytes = maxBytes;
    this.clock = clock;
  }

  /** The levels of a picture, if they are kept. */
  Optional<LevelFile> open(String sha256) {
    Path file = place(sha256);
    Optional<LevelFile> levels = LevelFile.open(file);
    if (levels.isPresent()) {
      try {
        Files.setLastModifiedTime(file, FileTime.from(clock.instant()));
      } catch (IOException readOnly) {
        return levels; // then it only counts as older than it is
      }
    }
    return levels;
  }

  Path place(String sha256) {
    return folder.resolve(sha256 + ENDING);
  }

  /** A name of its own for levels in the making, so that two programs don't disturb each other. */
  Path part(String sha256) throws IOException {
    Files.createDirectories(folder);
    return Files.createTempFile(folder, sha256.substring(0, 8) + "-", UNFINISHED);
  }

  /** Deletes the levels not opened for the longest until the rest is within the bound. */
  void tidy() throws IOException {
    if (!Files.isDirectory(folder)) {
      return;
    }
    List<Path> files = new ArrayList<>();
    try (Stream<Path> all = Files.list(folder)) {
      all.filter(file -> file.toString().endsWith(ENDING)).forEach(files::add);
    }
    files.sort(Comparator.comparing(LevelFolder::lastUsed).reversed());
    long bytes = 0;
    for (Path file : files) {
      bytes += Files.size(file);
      if (bytes > maxBytes) {
        Files.deleteIfExists(file);
      }
    }
  }

  private static FileTime lastUsed(Path file) {
    try {
      return Files.getLastModifiedTime(file);
    } catch (IOException gone) {
      return FileTime.fromMillis(0);
    }
  }
}
