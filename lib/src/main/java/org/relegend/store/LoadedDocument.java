package org.relegend.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.relegend.store.StoreException.Kind;

/**
 * A document as it was found in its folder.
 *
 * @param source digest of the file it was read from
 * @param onDisk digest of its file; empty where there is none
 * @param damaged whether that is there and can't be read, so that the document is the backup's
 */
record LoadedDocument<T>(
    T document, String source, String onDisk, boolean damaged, List<String> notices) {
  static void requireFolder(Path folder, String word) throws StoreException {
    if (!Files.isDirectory(folder)) {
      throw new StoreException(
          Kind.MISSING,
          folder,
          Files.exists(folder)
              ? "this is no folder. Name the folder that the %s is in.".formatted(word)
              : "there is no such folder. Check the path.");
    }
  }

  /** Reads the file, or the backup where that is missing or damaged, and tells so. */
  static <T> LoadedDocument<T> from(Path folder, DocumentFormat<T> format) throws StoreException {
    Path file = folder.resolve(format.file());
    Optional<byte[]> bytes = bytes(file);
    return bytes.isPresent()
        ? fromFile(file, bytes.get(), format)
        : withoutFile(file, folder, format);
  }

  private static <T> LoadedDocument<T> fromFile(Path file, byte[] bytes, DocumentFormat<T> format)
      throws StoreException {
    String digest = Digests.sha256(bytes);
    try {
      return new LoadedDocument<>(format.read(bytes, file), digest, digest, false, List.of());
    } catch (StoreException e) {
      if (e.kind() != Kind.BAD_CONTENT) {
        throw e;
      }
      return fromBackup(
              file,
              digest,
              "%1$s can't be read, so the %2$s is the one saved before it, from %1$s.bak. The trouble: %3$s"
                  .formatted(format.file(), format.word(), e.getMessage()),
              format)
          .orElseThrow(() -> e);
    }
  }

  private static <T> LoadedDocument<T> withoutFile(Path file, Path folder, DocumentFormat<T> format)
      throws StoreException {
    String notice =
        "There was no %1$s: the %2$s is from %1$s.bak.".formatted(format.file(), format.word());
    return fromBackup(file, "", notice, format)
        .orElseThrow(
            () ->
                new StoreException(
                    Kind.MISSING,
                    folder,
                    "there is no %s in this folder, so it is no %s. Check the path, or make a %s there."
                        .formatted(format.file(), format.title(), format.word())));
  }

  private static <T> Optional<LoadedDocument<T>> fromBackup(
      Path file, String onDisk, String notice, DocumentFormat<T> format) {
    Path backup = AtomicFile.backup(file);
    try {
      Optional<byte[]> bytes = bytes(backup);
      if (bytes.isEmpty()) {
        return Optional.empty();
      }
      T document = format.read(bytes.get(), backup);
      String source = Digests.sha256(bytes.get());
      return Optional.of(
          new LoadedDocument<>(document, source, onDisk, !onDisk.isEmpty(), List.of(notice)));
    } catch (StoreException e) {
      return Optional.empty(); // then the trouble with the file itself is told
    }
  }

  /** The content of a file, if there is one. */
  static Optional<byte[]> bytes(Path file) throws StoreException {
    try {
      if (Files.size(file) > DocumentFormat.MAX_BYTES) {
        throw new StoreException(
            Kind.BAD_CONTENT,
            file,
            "the file has more than %d MB, which none of ours has. Restore it from a copy."
                .formatted(DocumentFormat.MAX_BYTES >> 20));
      }
      return Optional.of(Files.readAllBytes(file));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw DiskErrors.reading(e, file);
    }
  }
}
