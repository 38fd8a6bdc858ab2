package org.relegend.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.Edit;
import org.relegend.map.EditHistory;
import org.relegend.map.Picture;
import org.relegend.store.StoreException.Kind;

/**
 * A board map's folder on disk: {@code map.json}, {@code pages/} and {@code photos/}. Opened for
 * editing it is locked, so that a second program gets it for reading only, and edits can be noted
 * in a journal that survives a crash. May be used from several threads: edits can be noted while
 * the map is being saved.
 */
public final class MapFolder implements AutoCloseable {
  public static final String MAP_FILE = "map.json";
  public static final String JOURNAL_FILE = "map.journal";
  public static final String LOCK_FILE = "map.lock";
  public static final String PAGES = "pages";
  public static final String PHOTOS = "photos";

  private final Path folder;
  private final Disk disk;
  private final EditHistory opened;
  private final List<String> notices;

  /** Both null where the folder is open for reading only. */
  private final @Nullable FolderLock lock;

  private final @Nullable Journal journal;

  /** Held while saving, so that one save ends before the next begins. */
  private final Object saving = new Object();

  /** Digest of map.json as it was last read or written; empty where there was none. */
  private String onDisk;

  /** Digest of what the last save was to write, whether that came to its end or not. */
  private String attempted = "";

  /** Whether map.json is one that can't be read. */
  private boolean damaged;

  private volatile boolean closed;

  private BoardMap map;

  private MapFolder(
      Path folder,
      Disk disk,
      Loaded<BoardMap> loaded,
      Replay replay,
      @Nullable FolderLock lock,
      @Nullable Journal journal,
      List<String> notices) {
    this.folder = folder;
    this.disk = disk;
    this.lock = lock;
    this.journal = journal;
    this.opened = replay.history();
    this.map = replay.history().current();
    this.onDisk = loaded.onDisk();
    this.damaged = loaded.damaged();
    this.notices = new ArrayList<>(notices);
  }

  /**
   * Opens a map for editing; for reading only where another program has it open or the folder can't
   * be written to, which {@link #notices} tells. Edits that an interrupted session left in the
   * journal are made again.
   *
   * @throws StoreException where there is no map that can be read
   */
  public static MapFolder open(Path folder) throws StoreException {
    return open(folder, Disk.REAL, Clock.systemUTC());
  }

  static MapFolder open(Path folder, Disk disk, Clock clock) throws StoreException {
    Loaded.requireFolder(folder, "map");
    Optional<FolderLock> lock;
    try {
      lock = FolderLock.take(folder, LOCK_FILE);
    } catch (IOException e) {
      return reading(
          folder, "This folder can't be written to: the map is opened for reading only.");
    }
    if (lock.isEmpty()) {
      return reading(
          folder, "Another window or program has this map open: it is opened for reading only.");
    }
    try {
      return editing(folder, disk, clock, lock.get());
    } catch (StoreException e) {
      free(lock.get(), e);
      throw e;
    }
  }

  /**
   * Opens a map for reading only, without a lock and without writing anything.
   *
   * @throws StoreException where there is no map that can be read
   */
  public static MapFolder openReadOnly(Path folder) throws StoreException {
    Loaded.requireFolder(folder, "map");
    return reading(
        folder,
        Files.exists(folder.resolve(JOURNAL_FILE))
            ? "There are edits that are not saved, from a session that goes on elsewhere or was"
                + " interrupted; they are not shown. To recover them, open the map for editing."
            : "");
  }

  private static MapFolder reading(Path folder, String notice) throws StoreException {
    Loaded<BoardMap> loaded = Loaded.from(folder, MapFormat.FORMAT);
    List<String> notices = new ArrayList<>(loaded.notices());
    if (!notice.isEmpty()) {
      notices.add(0, notice);
    }
    return new MapFolder(
        folder, Disk.REAL, loaded, Replay.none(loaded.document()), null, null, notices);
  }

  private static MapFolder editing(Path folder, Disk disk, Clock clock, FolderLock lock)
      throws StoreException {
    Loaded<BoardMap> loaded = Loaded.from(folder, MapFormat.FORMAT);
    Path file = folder.resolve(JOURNAL_FILE);
    Replay replay = Replay.of(file, loaded.document(), loaded.source());
    BoardMap now = replay.history().current();
    Journal journal = new Journal(file, clock, loaded.source(), replay);
    if (!replay.usable()) {
      AtomicFile.setAside(disk, file, ".aside-");
      if (!now.equals(loaded.document())) {
        journal.restart(JournalLine.Changed.between(loaded.document(), now));
      }
    }
    List<String> notices = new ArrayList<>(loaded.notices());
    notices.addAll(replay.notices());
    return new MapFolder(folder, disk, loaded, replay, lock, journal, notices);
  }

  private static void free(FolderLock lock, StoreException trouble) {
    try {
      lock.close();
    } catch (StoreException e) {
      trouble.addSuppressed(e);
    }
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
    Path file = folder.resolve(MAP_FILE);
    if (Files.exists(file) || Files.exists(AtomicFile.backup(file))) {
      throw new StoreException(
          Kind.EXISTS, folder, "there is a map in this folder already. Choose another folder.");
    }
    NewFolder made = NewFolder.make(folder);
    try {
      new AtomicFile(disk, file).replace(MapFormat.write(map), null);
      return open(folder, disk, Clock.systemUTC());
    } catch (StoreException e) {
      made.takeBack(e, file, folder.resolve(LOCK_FILE));
      throw e;
    }
  }

  public Path path() {
    return folder;
  }

  /** The map as it was opened, recovered edits included, or as it was last saved. */
  public synchronized BoardMap map() {
    return map;
  }

  /** A history to edit from; recovered edits can be undone in it. The same one at every call. */
  public EditHistory history() {
    return opened;
  }

  /** What the user should know of how the map was opened and saved, one sentence each. */
  public synchronized List<String> notices() {
    return List.copyOf(notices);
  }

  /** Whether {@link #save} is refused here. */
  public boolean readOnly() {
    return journal == null;
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
  public void save(BoardMap changed) throws StoreException {
    Path target = folder.resolve(MAP_FILE);
    synchronized (saving) {
      Journal open = writable(target);
      Optional<byte[]> old = unchanged(target);
      byte[] bytes = MapFormat.write(changed);
      String digest = Digests.sha256(bytes);
      journalling(() -> open.saving(digest, changed));
      if (damaged && old.isPresent()) {
        AtomicFile.setAside(disk, target, ".damaged-");
        old = Optional.empty();
      }
      damaged = false;
      attempted = digest;
      new AtomicFile(disk, target).replace(bytes, old.orElse(null));
      onDisk = digest;
      journalling(() -> open.saved(digest, changed));
      synchronized (this) {
        map = changed;
      }
    }
  }

  private Journal writable(Path target) throws StoreException {
    if (closed) {
      throw new StoreException(
          Kind.READ_ONLY, target, "the map was closed, and nothing was saved. Open it again.");
    }
    Journal open = journal;
    if (open == null) {
      throw new StoreException(
          Kind.READ_ONLY,
          target,
          "the map is open for reading only, and nothing was saved. Close it elsewhere and open it"
              + " again.");
    }
    return open;
  }

  /** The content of the map file, which must be the one that was last read or written. */
  private Optional<byte[]> unchanged(Path target) throws StoreException {
    Optional<byte[]> old = Loaded.bytes(target);
    String found = old.map(Digests::sha256).orElse(onDisk);
    if (!isOurs(found)) {
      throw new StoreException(
          Kind.CHANGED_ON_DISK,
          target,
          "the file was changed by another program since it was opened, and was not overwritten."
              + " Save your map in another folder, then merge the two.");
    }
    return old;
  }

  /**
   * Whether {@link #save} would be refused, as others have changed the file since.
   *
   * @throws StoreException where it can't be read
   */
  public boolean changedOnDisk() throws StoreException {
    Path target = folder.resolve(MAP_FILE);
    synchronized (saving) {
      Optional<String> found = Loaded.bytes(target).map(Digests::sha256);
      return found.filter(digest -> !isOurs(digest)).isPresent();
    }
  }

  private boolean isOurs(String digest) {
    return digest.equals(onDisk) || digest.equals(attempted);
  }

  /** A step of the journal. */
  private interface JournalAction {
    void run() throws StoreException;
  }

  /** The map itself can be saved where the journal can't: that is told, and no reason to fail. */
  private void journalling(JournalAction action) {
    try {
      action.run();
    } catch (StoreException e) {
      synchronized (this) {
        notices.add("Edits can't be kept against a crash for now: " + e.getMessage());
      }
    }
  }

  /**
   * Notes an edit in the journal and waits until it is on the disk, some milliseconds; to be called
   * in the order of the edits. Does nothing where the map is open for reading only.
   *
   * @param after the map after the edit
   * @throws StoreException where it can't be written; the edit is noted with the next one then
   */
  public void noteEdit(Edit edit, BoardMap after) throws StoreException {
    note(new JournalLine.Made(edit), after);
  }

  /** As {@link #noteEdit}, for an edit that was taken back. */
  public void noteUndo(BoardMap after) throws StoreException {
    note(JournalLine.Turn.UNDO, after);
  }

  /** As {@link #noteEdit}, for an edit that was made again. */
  public void noteRedo(BoardMap after) throws StoreException {
    note(JournalLine.Turn.REDO, after);
  }

  private void note(JournalLine.Step step, BoardMap after) throws StoreException {
    if (journal != null) {
      journal.note(step, after);
    }
  }

  /**
   * Forgets the edits that were noted since the last save, for a user who leaves without saving.
   *
   * @throws StoreException where the journal can't be removed
   */
  public void discardUnsaved() throws StoreException {
    if (journal != null) {
      journal.discard();
    }
  }

  /** Frees the lock. A journal of unsaved edits stays, for the next who opens the map. */
  @Override
  public void close() throws StoreException {
    if (lock == null || journal == null) {
      return;
    }
    synchronized (saving) {
      closed = true;
    }
    try {
      journal.close();
    } finally {
      lock.close();
    }
  }
}
