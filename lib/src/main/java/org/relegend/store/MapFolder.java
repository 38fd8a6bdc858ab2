package org.relegend.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.Picture;
import org.relegend.store.StoreException.Kind;

/**
 * A board map's folder on disk: {@code map.json}, {@code pages/} and {@code photos/}. Opened for
 * editing it is locked, so that a second program gets it for reading only. May be used from several
 * threads; a save makes readers of other methods wait no longer than for the file's last step.
 */
public final class MapFolder implements AutoCloseable {
  public static final String MAP_FILE = "map.json";
  public static final String LOCK_FILE = "map.lock";
  public static final String PAGES = "pages";
  public static final String PHOTOS = "photos";

  private final Path folder;
  private final AtomicFile file;
  private final @Nullable FolderLock lock;
  private final List<String> notices;
  private BoardMap map;

  /** Digest of map.json as it was last read or written; empty where there was none. */
  private String onDisk;

  /** Whether map.json is one that can't be read. */
  private boolean damaged;

  private MapFolder(Path folder, Disk disk, @Nullable FolderLock lock, Loaded loaded) {
    this.folder = folder;
    this.file = new AtomicFile(disk, folder.resolve(MAP_FILE));
    this.lock = lock;
    this.notices = new ArrayList<>(loaded.notices());
    this.map = loaded.map();
    this.onDisk = loaded.onDisk();
    this.damaged = loaded.damaged();
  }

  /**
   * Opens a map for editing; for reading only where another program has it open or the folder can't
   * be written to, which {@link #notices} tells.
   *
   * @throws StoreException where there is no map that can be read
   */
  public static MapFolder open(Path folder) throws StoreException {
    return open(folder, Disk.REAL);
  }

  static MapFolder open(Path folder, Disk disk) throws StoreException {
    Loaded.requireFolder(folder);
    List<String> notices = new ArrayList<>();
    FolderLock lock = null;
    try {
      lock = FolderLock.take(folder, LOCK_FILE).orElse(null);
      if (lock == null) {
        notices.add(
            "Another window or program has this map open: it is opened for reading only here.");
      }
    } catch (IOException e) {
      notices.add("This folder can't be written to: the map is opened for reading only.");
    }
    return finish(folder, disk, lock, notices);
  }

  private static MapFolder finish(
      Path folder, Disk disk, @Nullable FolderLock lock, List<String> notices)
      throws StoreException {
    try {
      Loaded loaded = Loaded.from(folder);
      MapFolder opened = new MapFolder(folder, disk, lock, loaded);
      opened.notices.addAll(0, notices);
      return opened;
    } catch (StoreException e) {
      free(lock, e);
      throw e;
    }
  }

  private static void free(@Nullable FolderLock lock, StoreException trouble) {
    if (lock != null) {
      try {
        lock.close();
      } catch (IOException e) {
        trouble.addSuppressed(e);
      }
    }
  }

  /**
   * Opens a map for reading only, without a lock and without writing anything.
   *
   * @throws StoreException where there is no map that can be read
   */
  public static MapFolder openReadOnly(Path folder) throws StoreException {
    Loaded.requireFolder(folder);
    return finish(folder, Disk.REAL, null, List.of());
  }

  /**
   * Makes a folder with a map in it and opens it for editing. The folder may be there already, as
   * long as no map is in it.
   *
   * @throws StoreException where it can't be; what was made of it is taken away again
   */
  public static MapFolder create(Path folder, BoardMap map) throws StoreException {
    return create(folder, map, Disk.REAL);
  }

  static MapFolder create(Path folder, BoardMap map, Disk disk) throws StoreException {
    AtomicFile file = new AtomicFile(disk, folder.resolve(MAP_FILE));
    if (Files.exists(folder.resolve(MAP_FILE)) || Files.exists(file.backup())) {
      throw new StoreException(
          Kind.EXISTS, folder, "there is a map in this folder already. Choose another folder.");
    }
    NewFolder made = NewFolder.make(folder);
    try {
      file.replace(MapFormat.write(map), null);
      return open(folder, disk);
    } catch (StoreException e) {
      made.takeBack(e);
      throw e;
    }
  }

  public Path path() {
    return folder;
  }

  /** The map as it was read or last saved. */
  public synchronized BoardMap map() {
    return map;
  }

  /** What the user should know of how the map was opened, one sentence each. */
  public synchronized List<String> notices() {
    return List.copyOf(notices);
  }

  /** Whether {@link #save} is refused here. */
  public boolean readOnly() {
    return lock == null;
  }

  /** Where the file of a picture is; the map itself takes care that it is inside the folder. */
  public Path fileOf(Picture picture) {
    return folder.resolve(picture.file());
  }

  /**
   * Writes the map over the old one, which is kept as {@code map.json.bak}. Returns when all of it
   * is on the disk; a kill at any instant before leaves the old map or the new one.
   *
   * @throws StoreException where it can't be written, was changed by others since, or is open for
   *     reading only; the file is as before then
   */
  public synchronized void save(BoardMap changed) throws StoreException {
    Path target = folder.resolve(MAP_FILE);
    if (readOnly()) {
      throw new StoreException(
          Kind.READ_ONLY,
          target,
          "the map is open for reading only, and nothing was saved. Close it elsewhere and open it"
              + " again.");
    }
    Optional<byte[]> old = Loaded.bytes(target);
    String found = old.map(Digests::sha256).orElse("");
    if (old.isPresent() && !found.equals(onDisk)) {
      throw new StoreException(
          Kind.CHANGED_ON_DISK,
          target,
          "the file was changed by another program since it was opened, and was not overwritten."
              + " Save your map in another folder, then merge the two.");
    }
    byte[] bytes = MapFormat.write(changed);
    if (damaged) {
      file.setAside();
      damaged = false;
      old = Optional.empty();
    }
    file.replace(bytes, old.orElse(null));
    onDisk = Digests.sha256(bytes);
    map = changed;
  }

  /** Frees the lock. */
  @Override
  public void close() throws StoreException {
    if (lock != null) {
      try {
        lock.close();
      } catch (IOException e) {
        throw DiskTroubles.writing(e, folder.resolve(LOCK_FILE));
      }
    }
  }
}
