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
  private final Disk disk;
  private final Path file;

  AtomicFile(Disk disk, Path file) {
    this.disk = disk;
    this.file = file;
  }

  Path backup() {
    return file.resolveSibling(file.getFileName() + ".bak");
  }

  private static Path temporary(Path target) {
    return target.resolveSibling(target.getFileName() + ".tmp");
  }

  /**
   * Replaces the content and waits until that is on the disk.
   *
   * @param old what is in the file now, to be kept as its backup; null to leave the backup alone
   */
  void replace(byte[] content, byte @Nullable [] old) throws StoreException {
    try {
      disk.write(temporary(file), content);
      if (old != null) {
        disk.write(temporary(backup()), old);
        disk.move(temporary(backup()), backup());
      }
      disk.move(temporary(file), file);
      disk.forceFolder(folder());
    } catch (IOException | UnsupportedOperationException e) {
      StoreException told = DiskTroubles.writing(e, file);
      cleanUp(told);
      throw told;
    }
  }

  /** Keeps a damaged file under a name that is free, so that it can still be looked into. */
  void setAside() throws StoreException {
    int number = 1;
    while (Files.exists(aside(number))) {
      number++;
    }
    try {
      disk.move(file, aside(number));
    } catch (IOException e) {
      throw DiskTroubles.writing(e, file);
    }
  }

  private Path aside(int number) {
    return file.resolveSibling(file.getFileName() + ".damaged-" + number);
  }

  private Path folder() {
    Path folder = file.toAbsolutePath().getParent();
    return folder == null ? file.toAbsolutePath() : folder;
  }

  private void cleanUp(StoreException told) {
    try {
      Files.deleteIfExists(temporary(file));
      Files.deleteIfExists(temporary(backup()));
    } catch (IOException e) {
      told.addSuppressed(e);
    }
  }
}
