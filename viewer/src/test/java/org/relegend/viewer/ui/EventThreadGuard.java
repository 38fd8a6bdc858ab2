package org.relegend.viewer.ui;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.swing.JComponent;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;

/**
 * Notes each change of a shown component that is made off the event thread. {@code repaint} may be
 * called from any thread, as its documentation says, so only a call that is not one counts.
 */
final class EventThreadGuard extends RepaintManager {
  private static final int DEEPEST = 40;

  private final List<String> violations = new CopyOnWriteArrayList<>();

  /** Puts a guard in place; every window shown afterwards is watched. */
  static EventThreadGuard install() {
    EventThreadGuard guard = new EventThreadGuard();
    RepaintManager.setCurrentManager(guard);
    return guard;
  }

  /** What was changed off the event thread so far, each with the calls that led there. */
  List<String> violations() {
    return List.copyOf(violations);
  }

  @Override
  public synchronized void addInvalidComponent(JComponent component) {
    note(component);
    super.addInvalidComponent(component);
  }

  @Override
  public void addDirtyRegion(JComponent component, int x, int y, int width, int height) {
    note(component);
    super.addDirtyRegion(component, x, y, width, height);
  }

  private void note(JComponent component) {
    if (SwingUtilities.isEventDispatchThread() || !component.isShowing()) {
      return;
    }
    StackTraceElement[] calls = new Throwable().getStackTrace();
    if (!asksOnlyForPainting(calls)) {
      violations.add(text(component, calls));
    }
  }

  /** The first call of Swing from outside of it is {@code repaint}, or a picture that arrives. */
  private static boolean asksOnlyForPainting(StackTraceElement[] calls) {
    String last = "";
    for (StackTraceElement call : calls) {
      if (call.getClassName().startsWith("org.relegend")
          && !call.getClassName().endsWith("Guard")) {
        break;
      }
      last = call.getMethodName();
    }
    return last.equals("repaint") || last.equals("imageUpdate");
  }

  private static String text(JComponent component, StackTraceElement[] calls) {
    StringBuilder text = new StringBuilder(component.getClass().getName());
    text.append(" on ").append(Thread.currentThread().getName());
    for (int i = 2; i < Math.min(calls.length, DEEPEST); i++) {
      text.append("\n  at ").append(calls[i]);
    }
    return text.toString();
  }
}
