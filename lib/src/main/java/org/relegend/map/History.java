package org.relegend.map;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * A document as it is edited: the current one, and those before and after it for undo and redo. Not
 * for use by several threads at once.
 *
 * @param <D> the document
 * @param <E> its edits
 */
public class History<D, E extends DocumentEdit<D>> {
  /** How many edits can be undone; the oldest are forgotten beyond that. */
  public static final int LIMIT = 1000;

  private record Step<D, E>(String label, E edit, D before, D after) {}

  private final Deque<Step<D, E>> done = new ArrayDeque<>();
  private final Deque<Step<D, E>> undone = new ArrayDeque<>();
  private D current;

  public History(D first) {
    current = first;
  }

  public D current() {
    return current;
  }

  /**
   * Makes an edit. An edit that changes nothing leaves no trace.
   *
   * @return whether the document changed
   * @throws EditRefusedException where it can't be made; the document and both lists are as before
   */
  public boolean apply(E edit) throws EditRefusedException {
    D after = edit.applyTo(current);
    if (after.equals(current)) {
      return false;
    }
    done.push(new Step<>(edit.label(current), edit, current, after));
    undone.clear();
    if (done.size() > LIMIT) {
      done.removeLast();
    }
    current = after;
    return true;
  }

  /** Takes back the last edit; tells which, or nothing where there is none. */
  public Optional<E> undo() {
    Step<D, E> step = done.poll();
    if (step == null) {
      return Optional.empty();
    }
    undone.push(step);
    current = step.before();
    return Optional.of(step.edit());
  }

  /** Makes the edit again that was last undone. */
  public Optional<E> redo() {
    Step<D, E> step = undone.poll();
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
