package org.relegend.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileStore;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;
import org.relegend.store.StoreException.Kind;

/** Tells in the user's words why the system refused to read or write. */
final class DiskErrors {
  /** Where less is left than this, a failed write is put down to the full disk. */
  private static final long HARDLY_ANY_ROOM = 64 << 10;

  private DiskErrors() {}

  static StoreException reading(IOException trouble, Path file) {
    if (trouble instanceof NoSuchFileException || trouble instanceof NotDirectoryException) {
      return new StoreException(
          Kind.MISSING, file, "there is no such file. Check the path.", trouble);
    }
    if (trouble instanceof AccessDeniedException) {
      return new StoreException(
          Kind.NO_RIGHTS,
          file,
          "it may not be read. Ask for the rights to read it, or copy it to a place of your own.",
          trouble);
    }
    return new StoreException(
        Kind.FAILED, file, "it can't be read (%s).".formatted(reason(trouble)), trouble);
  }

  /** Trouble while writing {@code file}; what was there before is still there. */
  static StoreException writing(Exception trouble, Path file) {
    String reason = reason(trouble);
    if (trouble instanceof AccessDeniedException
        || trouble instanceof ReadOnlyFileSystemException
        || reason.contains("read-only")
        || reason.contains("not permitted")) {
      return new StoreException(
          Kind.NO_RIGHTS,
          file,
          "it may not be written, and nothing was changed. Ask for the rights to write there, or"
              + " save in another folder.",
          trouble);
    }
    if (reason.contains("no space left")
        || reason.contains("quota")
        || reason.contains("file too large")
        || reason.contains("not enough space")
        || hardlyAnyRoom(file)) {
      return new StoreException(
          Kind.DISK_FULL,
          file,
          "the disk is full, and nothing was changed. Make room and save again.",
          trouble);
    }
    return new StoreException(
        Kind.FAILED,
        file,
        "it can't be written (%s), and nothing was changed. Check the folder and save again."
            .formatted(reason),
        trouble);
  }

  /** The new content is in place, and only a power cut could still undo it. */
  static StoreException unconfirmed(IOException trouble, Path file) {
    return new StoreException(
        Kind.FAILED,
        file,
        "it was written, but the disk did not confirm that it will last (%s). Save again."
            .formatted(reason(trouble)),
        trouble);
  }

  private static boolean hardlyAnyRoom(Path file) {
    try {
      Path folder = file.toAbsolutePath().getParent();
      if (folder == null) {
        return false;
      }
      // what the system itself shows as files, as under /proc, has no room at all, but isn't full
      FileStore store = Files.getFileStore(folder);
      return store.getTotalSpace() > 0 && store.getUsableSpace() < HARDLY_ANY_ROOM;
    } catch (IOException e) {
      return false;
    }
  }

  /** The system's own word for it: "no space left on device". */
  private static String reason(Exception trouble) {
    String reason =
        trouble instanceof FileSystemException failure ? failure.getReason() : trouble.getMessage();
    return reason == null ? "the system gives no reason" : reason.toLowerCase(Locale.ROOT);
  }
}
