package org.relegend.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.store.StoreException.Kind;

/**
 * A document's folder on disk. Opened for editing it is locked, so that a second program gets it
 * for reading only; once closed it writes nothing any more, since another may hold the lock. May be
 * used from several threads.
 *
 * @param <D> the document
 */
public abstract class DocumentFolder<D> implements AutoCloseable {
  /** Opens a folder in one way. */
  interface Opening<F, T> {
    F with(T given) throws StoreException;
  }

  private final Path folder;
  private final DiskOperations disk;
  private final DocumentFormat<D> format;
  private final List<String> notices;

  /** Null where the folder is open for reading only. */
  private final @Nullable FolderLock lock;

  /** Held while saving, so that one save ends before the next begins. */
  private final Object saving = new Object();

  /** Digest of the file as it was last read or written; empty where there was none. */
  private String onDisk;

  /** Digest of what the last save was to write, whether that came to its end or not. */
  private String attempted = "";

  /** Whether the file is one that can't be read. */
  private boolean damaged;

  private volatile boolean closed;

  private D document;

  /**
   * A folder that was read.
   *
   * @param now the document as it is worked on: as read, or with recovered edits
   */
  DocumentFolder(
      Path folder,
      DiskOperations disk,
      DocumentFormat<D> format,
      LoadedDocument<D> loaded,
      D now,
      @Nullable FolderLock lock,
      List<String> notices) {
    this.folder = folder;
    this.disk = disk;
    this.format = format;
    this.lock = lock;
    this.document = now;
    this.onDisk = loaded.onDisk();
    this.damaged = loaded.damaged();
    this.notices = new ArrayList<>(notices);
  }

  /** Opens for editing with the lock, or for reading only with the reason. */
  static <F> F open(
      Path folder,
      String word,
      String lockFile,
      Opening<F, FolderLock> editing,
      Opening<F, String> reading)
      throws StoreException {
    LoadedDocument.requireFolder(folder, word);
    Optional<FolderLock> lock;
    try {
      lock = FolderLock.take(folder, lockFile);
    } catch (IOException e) {
      return reading.with(
          "This folder can't be written to: the %s is opened for reading only.".formatted(word));
    }
    if (lock.isEmpty()) {
      return reading.with(
          "Another window or program has this %s open: it is opened for reading only."
              .formatted(word));
    }
    try {
      return editing.with(lock.get());
    } catch (StoreException e) {
      free(lock.get(), e);
      throw e;
    }
  }

  private static void free(FolderLock lock, StoreException trouble) {
    try {
      lock.close();
    } catch (StoreException e) {
      trouble.addSuppressed(e);
    }
  }

  /** What there is to tell of a reading, the reason for not editing first. */
  static List<String> notices(LoadedDocument<?> loaded, String reason) {
    List<String> notices = new ArrayList<>(loaded.notices());
    if (!reason.isEmpty()) {
      notices.add(0, reason);
    }
    return notices;
  }

  /** Whether there is such a document in this folder, readable or not. */
  static boolean holds(Path folder, String fileName) {
    Path file = folder.resolve(fileName);
    return Files.exists(file) || Files.exists(AtomicFile.backup(file));
  }

  /** Makes a folder with a document in it and opens it; takes all away where that fails. */
  static <D, F> F create(
      Path folder,
      DocumentFormat<D> format,
      D document,
      DiskOperations disk,
      String lockFile,
      Opening<F, Path> opening)
      throws StoreException {
    if (holds(folder, format.file())) {
      throw new StoreException(
          Kind.EXISTS,
          folder,
          "there is a %s in this folder already. Choose another folder.".formatted(format.word()));
    }
    Path file = folder.resolve(format.file());
    NewFolder made = NewFolder.make(folder);
    try {
      new AtomicFile(disk, file).replace(format.write(document), null);
      return opening.with(folder);
    } catch (StoreException e) {
      made.takeBack(e, file, folder.resolve(lockFile));
      throw e;
    }
  }

  public final Path path() {
    return folder;
  }

  /** The document as it was opened or last saved. */
  final synchronized D document() {
    return document;
  }

  /** What the user should know of how it was opened and saved, one sentence each. */
  public final synchronized List<String> notices() {
    return List.copyOf(notices);
  }

  final synchronized void notice(String notice) {
    notices.add(notice);
  }

  /** Whether {@link #save} is refused here since the folder isn't open for editing. */
  public final boolean readOnly() {
    return lock == null;
  }

  /**
   * Writes the document over the old one, which is kept beside it as {@code .bak}. Returns when all
   * of it is on the disk; a kill at any instant before leaves the old document or the new one.
   *
   * @throws StoreException where it can't be written, was changed by others since, is open for
   *     reading only or was closed; the file is as before then
   */
  public void save(D changed) throws StoreException {
    Path target = folder.resolve(format.file());
    synchronized (saving) {
      requireWritable("nothing was saved");
      Optional<byte[]> old = unchanged(target);
      byte[] bytes = format.write(changed);
      String digest = Digests.sha256(bytes);
      saving(digest, changed);
      if (damaged && old.isPresent()) {
        AtomicFile.setAside(disk, target, ".damaged-");
        old = Optional.empty();
      }
      damaged = false;
      attempted = digest;
      new AtomicFile(disk, target).replace(bytes, old.orElse(null));
      onDisk = digest;
      saved(digest, changed);
      synchronized (this) {
        document = changed;
      }
    }
  }

  /** The file is about to be replaced by one of this digest. */
  void saving(String digest, D changed) {}

  /** The file was replaced. */
  void saved(String digest, D changed) {}

  /** What helps where others have changed the file. */
  abstract String remedyForChanged();

  /**
   * Refuses to write into a folder that is not, or no longer, this one's.
   *
   * @param lost what didn't happen, for the message
   */
  final void requireWritable(String lost) throws StoreException {
    Path target = folder.resolve(format.file());
    if (closed) {
      throw new StoreException(
          Kind.READ_ONLY,
          target,
          "the %s was closed, and %s. Open it again.".formatted(format.word(), lost));
    }
    if (lock == null) {
      throw new StoreException(
          Kind.READ_ONLY,
          target,
          "the %s is open for reading only, and %s. Close it elsewhere and open it again."
              .formatted(format.word(), lost));
    }
  }

  /** The content of the file, which must be the one that was last read or written. */
  private Optional<byte[]> unchanged(Path target) throws StoreException {
    Optional<byte[]> old = LoadedDocument.bytes(target);
    String found = old.map(Digests::sha256).orElse(onDisk);
    if (!isOurs(found)) {
      throw new StoreException(
          Kind.CHANGED_ON_DISK,
          target,
          "the file was changed by another program since it was opened, and was not overwritten. "
              + remedyForChanged());
    }
    return old;
  }

  /**
   * Whether {@link #save} would be refused, as others have changed the file since.
   *
   * @throws StoreException where it can't be read
   */
  public final boolean changedOnDisk() throws StoreException {
    Path target = folder.resolve(format.file());
    synchronized (saving) {
      Optional<String> found = LoadedDocument.bytes(target).map(Digests::sha256);
      return found.filter(digest -> !isOurs(digest)).isPresent();
    }
  }

  private boolean isOurs(String digest) {
    return digest.equals(onDisk) || digest.equals(attempted);
  }

  /** Ends a save that goes on, then frees the lock; a second time nothing is left to free. */
  @Override
  public final void close() throws StoreException {
    synchronized (saving) {
      if (lock == null || closed) {
        return;
      }
      closed = true;
      try {
        closing();
      } finally {
        lock.close();
      }
    }
  }

  /** Closes what else is open. */
  void closing() throws StoreException {}
}
