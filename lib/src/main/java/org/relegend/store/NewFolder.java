package org.relegend.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;
import org.relegend.store.StoreException.Kind;

/** A folder that was made, and can be taken back where what should come into it fails. */
final class NewFolder {
  private final Deque<Path> made = new ArrayDeque<>();

  private NewFolder() {}

  /** Makes the folder and those above it, as far as they aren't there. */
  static NewFolder make(Path folder) throws StoreException {
    NewFolder result = new NewFolder();
    Deque<Path> missing = new ArrayDeque<>();
    for (@Nullable Path step = folder.toAbsolutePath();
        step != null && !Files.isDirectory(step);
        step = step.getParent()) {
      missing.push(step);
    }
    for (Path step : missing) {
      try {
        Files.createDirectory(step);
        result.made.push(step);
      } catch (FileAlreadyExistsException e) {
        throw result.failed(
            new StoreException(
                Kind.EXISTS, step, "this is a file, not a folder. Choose another place.", e));
      } catch (IOException e) {
        throw result.failed(DiskErrors.writing(e, step));
      }
    }
    return result;
  }

  private StoreException failed(StoreException trouble) {
    takeBack(trouble);
    return trouble;
  }

  /** Removes the files given, as far as they are there, and the folders that were made. */
  void takeBack(StoreException because, Path... files) {
    try {
      for (Path file : files) {
        Files.deleteIfExists(file);
      }
      while (!made.isEmpty()) {
        Files.delete(made.pop());
      }
    } catch (IOException e) {
      because.addSuppressed(e);
    }
  }
}
