package org.relegend.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Keeps two programs from editing one folder. The system frees the lock when the program ends, in
 * whatever way; the empty lock file stays, since removing it could take away another's lock.
 */
final class FolderLock implements AutoCloseable {
  /**
   * Folders locked by this program. Asking the system would not do: on Unix, closing the second
   * channel would free the first one's lock.
   */
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  private final Path folder;
  private final FileChannel channel;

  private FolderLock(Path folder, FileChannel channel) {
    this.folder = folder;
    this.channel = channel;
  }

  /**
   * Takes the lock, or tells by an empty result that another has it.
   *
   * @throws IOException where the folder can't be written to
   */
  static Optional<FolderLock> take(Path folder, String name) throws IOException {
    Path real = folder.toRealPath();
    if (!HELD.add(real)) {
      return Optional.empty();
    }
    FileChannel channel = null;
    boolean taken = false;
    try {
      channel =
          FileChannel.open(real.resolve(name), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      taken = channel.tryLock() != null;
      return taken ? Optional.of(new FolderLock(real, channel)) : Optional.empty();
    } catch (OverlappingFileLockException e) {
      return Optional.empty();
    } finally {
      if (!taken) {
        HELD.remove(real);
        if (channel != null) {
          channel.close();
        }
      }
    }
  }

  @Override
  public void close() throws StoreException {
    try {
      channel.close();
    } catch (IOException e) {
      throw DiskErrors.writing(e, folder);
    } finally {
      HELD.remove(folder);
    }
  }
}
