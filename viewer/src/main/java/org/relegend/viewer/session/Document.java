package org.relegend.viewer.session;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.Edit;
import org.relegend.map.EditHistory;
import org.relegend.map.EditRefusedException;
import org.relegend.map.MapIndex;

/** The open map as it is edited: every change of it goes through here. */
public final class Document {
  /** Is told of each change of the map, in order, so that none is lost. */
  public interface Keeper {
    /** An edit was made. */
    void made(Edit edit, BoardMap after);

    /** The last edit was taken back. */
    void undone(BoardMap after);

    /** An edit was made again. */
    void redone(BoardMap after);
  }

  private final Hub hub;
  private final List<Keeper> keepers = new CopyOnWriteArrayList<>();
  private final EditHistory history;
  private @Nullable MapIndex index;
  private boolean readOnly;

  Document(EditHistory history, Hub hub) {
    this.hub = hub;
    this.history = history;
  }

  public void add(Keeper keeper) {
    keepers.add(keeper);
  }

  public BoardMap map() {
    return history.current();
  }

  /** The index of the current map; made anew after each edit, when first asked for. */
  public MapIndex index() {
    MapIndex known = index;
    if (known == null) {
      known = new MapIndex(map());
      index = known;
    }
    return known;
  }

  public boolean isReadOnly() {
    return readOnly;
  }

  /** From now on edits are refused, or taken again. */
  public void setReadOnly(boolean readOnly) {
    hub.check();
    this.readOnly = readOnly;
    hub.fire(Change.RIGHTS);
  }

  /** Makes an edit; where it can't be made says why. Tells whether the map is as asked now. */
  public boolean apply(Edit edit) {
    hub.check();
    if (readOnly) {
      hub.say(Notice.Kind.READ_ONLY);
      return false;
    }
    try {
      if (history.apply(edit)) {
        changed(keeper -> keeper.made(edit, map()));
      }
      return true;
    } catch (EditRefusedException refused) {
      hub.say(Notice.Kind.REFUSED, String.valueOf(refused.getMessage()));
      return false;
    }
  }

  public boolean undo() {
    return step(true);
  }

  public boolean redo() {
    return step(false);
  }

  private boolean step(boolean back) {
    hub.check();
    if (readOnly) {
      hub.say(Notice.Kind.READ_ONLY);
      return false;
    }
    String label = (back ? undoLabel() : redoLabel()).orElse("");
    Optional<Edit> done = back ? history.undo() : history.redo();
    if (done.isEmpty()) {
      hub.say(back ? Notice.Kind.NOTHING_TO_UNDO : Notice.Kind.NOTHING_TO_REDO);
      return false;
    }
    if (back) {
      changed(keeper -> keeper.undone(map()));
    } else {
      changed(keeper -> keeper.redone(map()));
    }
    hub.say(back ? Notice.Kind.UNDONE : Notice.Kind.REDONE, label);
    return true;
  }

  private void changed(Consumer<Keeper> tell) {
    index = null;
    keepers.forEach(tell);
    hub.fire(Change.MAP);
  }

  public Optional<String> undoLabel() {
    return history.undoLabel();
  }

  public Optional<String> redoLabel() {
    return history.redoLabel();
  }
}
