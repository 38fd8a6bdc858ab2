package org.relegend.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.Edit;
import org.relegend.map.EditHistory;
import org.relegend.map.Picture;

/**
 * A board map's folder on disk: {@code map.json}, {@code pages/} and {@code photos/}. Opened for
 * editing, edits can be noted in a journal that survives a crash, also while the map is being
 * saved.
 */
public final class MapFolder extends DocumentFolder<BoardMap> {
  public static final String MAP_FILE = "map.json";
  public static final String JOURNAL_FILE = "map.journal";
  public static final String LOCK_FILE = "map.lock";
  public static final String PAGES = "pages";
  public static final String PHOTOS = "photos";

  private final EditHistory opened;

  /** Null where the folder is open for reading only. */
  private final @Nullable Journal journal;

  private MapFolder(
      Path folder,
      DiskOperations disk,
      LoadedDocument<BoardMap> loaded,
      JournalReplay replay,
      @Nullable FolderLock lock,
      @Nullable Journal journal,
      List<String> notices) {
    super(folder, disk, MapFormat.FORMAT, loaded, replay.history().current(), lock, notices);
    this.journal = journal;
    this.opened = replay.history();
  }

  /**
   * Opens a map for editing; for reading only where another program has it open or the folder can't
   * be written to, which {@link #notices} tells. Edits that an interrupted session left in the
   * journal are made again.
   *
   * @throws StoreException where there is no map that can be read
   */
  public static MapFolder open(Path folder) throws StoreException {
    return open(folder, DiskOperations.REAL, Clock.systemUTC());
  }

  static MapFolder open(Path folder, DiskOperations disk, Clock clock) throws StoreException {
    return open(
        folder,
        "map",
        LOCK_FILE,
        lock -> editing(folder, disk, clock, lock),
        reason -> reading(folder, reason));
  }

  /**
   * Opens a map for reading only, without a lock and without writing anything.
   *
   * @throws StoreException where there is no map that can be read
   */
  public static MapFolder openReadOnly(Path folder) throws StoreException {
    LoadedDocument.requireFolder(folder, "map");
    return reading(
        folder,
        Files.exists(folder.resolve(JOURNAL_FILE))
            ? "There are edits that are not saved, from a session that goes on elsewhere or was"
                + " interrupted; they are not shown. To recover them, open the map for editing."
            : "");
  }

  private static MapFolder reading(Path folder, String reason) throws StoreException {
    LoadedDocument<BoardMap> loaded = LoadedDocument.from(folder, MapFormat.FORMAT);
    JournalReplay none = JournalReplay.none(loaded.document());
    return new MapFolder(
        folder, DiskOperations.REAL, loaded, none, null, null, notices(loaded, reason));
  }

  private static MapFolder editing(Path folder, DiskOperations disk, Clock clock, FolderLock lock)
      throws StoreException {
    LoadedDocument<BoardMap> loaded = LoadedDocument.from(folder, MapFormat.FORMAT);
    Path file = folder.resolve(JOURNAL_FILE);
    JournalReplay replay = JournalReplay.of(file, loaded.document(), loaded.source());
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

  /**
   * Makes a folder with a map in it and opens it for editing. The folder may be there already, as
   * long as no map is in it.
   *
   * @throws StoreException where it can't be; what was made of it is taken away again
   */
  public static MapFolder create(Path folder, BoardMap map) throws StoreException {
    return create(folder, map, DiskOperations.REAL);
  }

  static MapFolder create(Path folder, BoardMap map, DiskOperations disk) throws StoreException {
    return create(
        folder,
        MapFormat.FORMAT,
        map,
        disk,
        LOCK_FILE,
        made -> open(made, disk, Clock.systemUTC()));
  }

  /** The map as it was opened, recovered edits included, or as it was last saved. */
  public BoardMap map() {
    return document();
  }

  /** A history to edit from; recovered edits can be undone in it. The same one at every call. */
  public EditHistory history() {
    return opened;
  }

  /** Where the file of a picture is; the map itself takes care that it is inside the folder. */
  public Path fileOf(Picture picture) {
    return path().resolve(picture.file());
  }

  @Override
  void saving(String digest, BoardMap changed) {
    journalling(open -> open.saving(digest, changed));
  }

  @Override
  void saved(String digest, BoardMap changed) {
    journalling(open -> open.saved(digest, changed));
  }

  @Override
  String remedyForChanged() {
    return "Save your map in another folder, then merge the two.";
  }

  /** A step of the journal. */
  private interface JournalAction {
    void in(Journal journal) throws StoreException;
  }

  /** The map itself can be saved where the journal can't: that is told, and no reason to fail. */
  private void journalling(JournalAction action) {
    if (journal != null) {
      try {
        action.in(journal);
      } catch (StoreException e) {
        notice("Edits can't be kept against a crash for now: " + e.getMessage());
      }
    }
  }

  /**
   * Notes an edit in the journal and waits until it is on the disk, some milliseconds; to be called
   * in the order of the edits. Does nothing where the map is open for reading only.
   *
   * @param after the map after the edit
   * @throws StoreException where it can't be written: the edit is noted with the next one then; or
   *     where the map was closed
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
      synchronized (journal) { // as close() frees the lock only after the journal
        requireWritable("the edit was not noted");
        journal.note(step, after);
      }
    }
  }

  /**
   * Forgets the edits that were noted since the last save, for a user who leaves without saving.
   *
   * @throws StoreException where the journal can't be removed
   */
  public void discardUnsaved() throws StoreException {
    if (journal != null) {
      synchronized (journal) {
        requireWritable("the unsaved edits were not discarded");
        journal.discard();
      }
    }
  }

  /** A journal of unsaved edits stays, for the next who opens the map. */
  @Override
  void closing() throws StoreException {
    if (journal != null) {
      journal.close();
    }
  }
}
