package org.relegend.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * A file that is always whole: whoever reads it, at whatever moment a writer is killed, finds the
 * old content or the new one. The one before is kept beside it as {@code .bak}.
 */
final class AtomicFile {
  private final DiskOperations disk;
  private final Path file;

  AtomicFile(DiskOperations disk, Path file) {
    this.disk = disk;
    this.file = file;
  }

  static Path backup(Path file) {
    return beside(file, ".bak");
  }

  private static Path temporary(Path target) {
    return beside(target, ".tmp");
  }

  private static Path beside(Path file, String ending) {
    return file.resolveSibling(file.getFileName() + ending);
  }

  /**
   * Replaces the content and waits until that is on the disk.
   *
   * @param old what is in the file now, to be kept as its backup; null to leave the backup alone
   * @throws StoreException where the file has its old content still, or the new one is there and
   *     the disk didn't confirm it
   */
  void replace(byte[] content, byte @Nullable [] old) throws StoreException {
    Path backup = backup(file);
    try {
      disk.write(temporary(file), content);
      if (old != null) {
        disk.write(temporary(backup), old);
        disk.move(temporary(backup), backup);
      }
      disk.move(temporary(file), file);
    } catch (IOException | UnsupportedOperationException e) {
      StoreException failure = DiskErrors.writing(e, file);
      cleanUp(failure, temporary(file), temporary(backup));
      throw failure;
    }
    try {
      disk.forceFolder(folder());
    } catch (IOException e) {
      throw DiskErrors.unconfirmed(e, file);
    }
  }

  private Path folder() {
    Path folder = file.toAbsolutePath().getParent();
    return folder == null ? file.toAbsolutePath() : folder;
  }

  private static void cleanUp(StoreException failure, Path... left) {
    for (Path path : left) {
      try {
        Files.deleteIfExists(path);
      } catch (IOException e) {
        failure.addSuppressed(e);
      }
    }
  }

  /**
   * Moves a file that can't be used to a free name beside it, so that it can still be looked into.
   *
   * @param ending of the new name, before a number
   */
  static void setAside(DiskOperations disk, Path file, String ending) throws StoreException {
    int number = 1;
    while (Files.exists(beside(file, ending + number))) {
      number++;
    }
    try {
      disk.move(file, beside(file, ending + number));
    } catch (IOException e) {
      throw DiskErrors.writing(e, file);
    }
  }
}
