package org.relegend.viewer.ui;

import java.util.function.Consumer;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.Edit;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import org.relegend.viewer.session.MapDocument;
import org.relegend.viewer.work.TaskRunner;

/**
 * Keeps the open map on disk by itself: each edit is noted in the journal at once, the map's file
 * is saved soon after; both off the event thread, in order.
 */
final class MapAutosave implements MapDocument.Storage {
  /** How the open map stands to the one on disk. */
  sealed interface State {
    record Saved() implements State {}

    record Unsaved() implements State {}

    record SaveRunning() implements State {}

    record ReadOnly() implements State {}

    /** Somebody else changed it there: nothing is written any more. */
    record ChangedOnDisk() implements State {}

    record Failed(String reason) implements State {}
  }

  /** Edits that follow each other faster than this are saved together. */
  private static final int MILLIS = 700;

  private final MapFolder folder;
  private final TaskRunner jobs;
  private final Consumer<State> shown;
  private final Timer timer = new Timer(MILLIS, fired -> save());
  private BoardMap newest;
  private State state;
  private @Nullable Runnable whenSaved;

  /**
   * @param jobs with one thread, so that saves keep their order
   */
  MapAutosave(MapFolder folder, TaskRunner jobs, Consumer<State> shown) {
    this.folder = folder;
    this.jobs = jobs;
    this.shown = shown;
    newest = folder.map();
    state = folder.readOnly() ? new State.ReadOnly() : new State.Saved();
    timer.setRepeats(false);
  }

  /** Whether edits were made that are not in the map's file. */
  boolean hasUnsaved() {
    return !newest.equals(folder.map());
  }

  State state() {
    return state;
  }

  @Override
  public void made(Edit edit, BoardMap after) {
    note(after, () -> folder.noteEdit(edit, after));
  }

  @Override
  public void undone(BoardMap after) {
    note(after, () -> folder.noteUndo(after));
  }

  @Override
  public void redone(BoardMap after) {
    note(after, () -> folder.noteRedo(after));
  }

  private interface Note {
    void write() throws StoreException;
  }

  /** Into the journal at once, into the map's file a little later. */
  private void note(BoardMap after, Note note) {
    newest = after;
    jobs.run(
        folder.path().toString(),
        watch -> {
          note.write();
          return after;
        },
        noted -> {},
        problem -> become(troubleOf(problem)));
    if (!(state instanceof State.ChangedOnDisk)) {
      become(new State.Unsaved());
      timer.restart();
    }
  }

  /** Saves at once what isn't saved yet; then runs this, on the event thread. */
  void flush(Runnable then) {
    whenSaved = then;
    save();
  }

  /** Looks whether others changed the map on disk meanwhile, so that it is told before a save. */
  void lookAtDisk() {
    if (state instanceof State.Saved || state instanceof State.Unsaved) {
      jobs.run(
          folder.path().toString(),
          watch -> folder.changedOnDisk(),
          changed -> {
            if (changed) {
              timer.stop();
              become(new State.ChangedOnDisk());
            }
          },
          unreadable -> {});
    }
  }

  void save() {
    timer.stop();
    if (state instanceof State.Saved || state instanceof State.ReadOnly) {
      finish(state);
      return;
    }
    become(new State.SaveRunning());
    BoardMap saving = newest;
    jobs.run(
        folder.path().toString(),
        watch -> {
          folder.save(saving);
          return saving;
        },
        saved -> finish(saved.equals(newest) ? new State.Saved() : new State.Unsaved()),
        problem -> finish(troubleOf(problem)));
  }

  private static State troubleOf(Throwable problem) {
    if (problem instanceof StoreException trouble) {
      return trouble.kind() == StoreException.Kind.CHANGED_ON_DISK
          ? new State.ChangedOnDisk()
          : new State.Failed(String.valueOf(trouble.getMessage()));
    }
    return new State.Failed(problem.toString());
  }

  private void finish(State reached) {
    become(reached);
    if (reached instanceof State.Unsaved) {
      timer.restart();
    }
    Runnable then = whenSaved;
    if (then != null && !(reached instanceof State.Unsaved)) {
      whenSaved = null;
      then.run();
    } else if (then != null) {
      save();
    }
  }

  private void become(State reached) {
    state = reached;
    shown.accept(reached);
  }
}
