package org.relegend.viewer.ui;

import org.relegend.map.Box;
import org.relegend.viewer.control.PointerPosition;
import org.relegend.viewer.view.ViewState;

/**
 * What pointing on a picture does, besides panning and zooming. All on the event thread. A press
 * that is let go where it began is a click; the keyboard clicks in the middle of the canvas.
 */
public interface PictureTool {
  /** Does nothing: dragging pans. */
  PictureTool LOOK = new PictureTool() {};

  /** The main button clicked. */
  default void click(PointerPosition pointer) {}

  /** A drag with the main button begins here: true to take it, false to let it pan. */
  default boolean dragBegins(PointerPosition pointer) {
    return false;
  }

  /** A drag that was taken goes on. */
  default void dragged(PointerPosition pointer) {}

  /** A drag that was taken ends: one edit is made here. */
  default void dropped(PointerPosition pointer) {}

  /** A drag that was taken is given up (Escape, or the focus went): leave all as it was. */
  default void dragCancelled() {}

  /** The pointer moves with no button down. */
  default void moved(PointerPosition pointer) {}

  /** The pointer left the canvas. */
  default void left() {}

  /** The view is to be moved by hand: runs this at once, later, or never. */
  default void approach(ViewState to, Runnable move) {
    move.run();
  }

  /** Whether so much of the picture may be shown magnified. */
  default boolean mayMagnify(Box shown) {
    return true;
  }

  /** The button for context menus. */
  default void menu(PointerPosition pointer) {}
}
