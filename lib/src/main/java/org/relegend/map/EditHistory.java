package org.relegend.map;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * A map as it is edited: the current one, and those before and after it for undo and redo. Not for
 * use by several threads at once.
 */
public final class EditHistory {
  /** How many edits can be undone; the oldest are forgotten beyond that. */
  public static final int LIMIT = 1000;

  private record Step(String label, Edit edit, BoardMap before, BoardMap after) {}

  private final Deque<Step> done = new ArrayDeque<>();
  private final Deque<Step> undone = new ArrayDeque<>();
  private BoardMap current;

  public EditHistory(BoardMap first) {
    current = first;
  }

  public BoardMap current() {
    return current;
  }

  /**
   * Makes an edit. An edit that changes nothing leaves no trace.
   *
   * @return whether the map changed
   * @throws EditRefusedException where it can't be made; the map and both lists are as before
   */
  public boolean apply(Edit edit) throws EditRefusedException {
    BoardMap after = edit.applyTo(current);
    if (after.equals(current)) {
      return false;
    }
    done.push(new Step(edit.label(current), edit, current, after));
    undone.clear();
    if (done.size() > LIMIT) {
      done.removeLast();
    }
    current = after;
    return true;
  }

  /** Takes back the last edit; tells which, or nothing where there is none. */
  public Optional<Edit> undo() {
    Step step = done.poll();
    if (step == null) {
      return Optional.empty();
    }
    undone.push(step);
    current = step.before();
    return Optional.of(step.edit());
  }

  /** Makes the edit again that was last undone. */
  public Optional<Edit> redo() {
    Step step = undone.poll();
    if (step == null) {
      return Optional.empty();
    }
    done.push(step);
    current = step.after();
    return Optional.of(step.edit());
  }

  /** The label of what {@link #undo} would take back. */
  public Optional<String> undoLabel() {
    return Optional.ofNullable(done.peek()).map(Step::label);
  }

  /** The label of what {@link #redo} would make again. */
  public Optional<String> redoLabel() {
    return Optional.ofNullable(undone.peek()).map(Step::label);
  }
}
