package org.relegend.share;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import org.jspecify.annotations.Nullable;
import org.relegend.store.StoreException;
import org.relegend.store.StoreException.Kind;

/**
 * A folder that comes into being whole or not at all: filled beside its place, then moved there.
 */
final class StagedFolder implements AutoCloseable {
  private final Path target;
  private final Path folder;
  private boolean done;

  private StagedFolder(Path target, Path folder) {
    this.target = target;
    this.folder = folder;
  }

  /**
   * Begins a folder.
   *
   * @throws StoreException where the place is taken or can't be written to
   */
  static StagedFolder of(Path target) throws StoreException {
    Path absolute = target.toAbsolutePath().normalize();
    Path parent = absolute.getParent();
    if (parent == null || absolute.getFileName() == null) {
      throw new StoreException(Kind.EXISTS, target, "this can't be a new folder. Name another.");
    }
    try {
      refuseFull(absolute);
      Files.createDirectories(parent);
      return new StagedFolder(absolute, Files.createTempDirectory(parent, ".relegend-"));
    } catch (IOException e) {
      throw new StoreException(
          Kind.FAILED,
          target,
          "no folder can be made there (%s). Choose another place.".formatted(e.getMessage()),
          e);
    }
  }

  private static void refuseFull(Path target) throws IOException, StoreException {
    if (Files.isDirectory(target)) {
      try (DirectoryStream<Path> content = Files.newDirectoryStream(target)) {
        if (content.iterator().hasNext()) {
          throw new StoreException(
              Kind.EXISTS, target, "this folder is not empty. Name a new one.");
        }
      }
    } else if (Files.exists(target)) {
      throw new StoreException(
          Kind.EXISTS, target, "this is a file, not a folder. Choose another place.");
    }
  }

  Path folder() {
    return folder;
  }

  /** Puts the filled folder in its place. */
  void commit() throws StoreException {
    try {
      Files.deleteIfExists(target);
      try {
        Files.move(folder, target, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(folder, target);
      }
      done = true;
    } catch (IOException e) {
      throw new StoreException(
          Kind.FAILED,
          target,
          "the folder can't be put there (%s). Choose another place.".formatted(e.getMessage()),
          e);
    }
  }

  /** Takes away what was not put in its place. */
  @Override
  public void close() throws StoreException {
    if (!done) {
      try {
        delete(folder);
      } catch (IOException e) {
        throw new StoreException(
            Kind.FAILED, folder, "this half-made folder can't be removed; remove it by hand.", e);
      }
    }
  }

  static void delete(Path folder) throws IOException {
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path made, @Nullable IOException trouble)
              throws IOException {
            Files.delete(made);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
