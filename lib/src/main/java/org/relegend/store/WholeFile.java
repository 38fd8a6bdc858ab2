package org.relegend.store;

import java.nio.file.Path;

/** Writes files that others only ever see whole: the old content or the new one. */
public final class WholeFile {
  private WholeFile() {}

  /**
   * Writes a file, or replaces it, and waits until that is on the disk.
   *
   * @throws StoreException where it can't be written; what was there is as before
   */
  public static void write(Path file, byte[] content) throws StoreException {
    new AtomicFile(DiskOperations.REAL, file).replace(content, null);
  }
}
