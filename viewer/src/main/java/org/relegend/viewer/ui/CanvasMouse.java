package org.relegend.viewer.ui;

import java.awt.Component;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/**
 * The mouse on a canvas: clicks and drags go to the tool; what the tool doesn't take pans, as the
 * middle button always does; the wheel zooms at the pointer.
 */
final class CanvasMouse extends MouseAdapter {
  /** A press may shake so many pixels and still be a click. */
  private static final double SHAKE = 4;

  private static final double ZOOM_PER_NOTCH = 1.2;

  /** What the drag under way does. */
  private enum Drag {
    NONE,
    /** Pressed, not moved far yet. */
    PRESSED,
    TOOL,
    PAN
  }

  private final PictureCanvas canvas;
  private Drag drag = Drag.NONE;
  private boolean mainButton;
  private @Nullable MouseEvent pressed;
  private @Nullable ViewState before;

  CanvasMouse(PictureCanvas canvas) {
    this.canvas = canvas;
  }

  @Override
  public void mousePressed(MouseEvent event) {
    if (!canvas.interactive()) {
      passOn(event);
      return;
    }
    canvas.requestFocusInWindow();
    if (event.isPopupTrigger()) {
      canvas.pointer(event).ifPresent(canvas.tool()::menu);
      return;
    }
    mainButton = SwingUtilities.isLeftMouseButton(event);
    if (drag == Drag.NONE && (mainButton || SwingUtilities.isMiddleMouseButton(event))) {
      drag = Drag.PRESSED;
      pressed = event;
      before = canvas.view().orElse(null);
    }
  }

  @Override
  public void mouseDragged(MouseEvent event) {
    follow(event);
    MouseEvent start = pressed;
    if (start == null) {
      passOn(event);
      return;
    }
    if (drag == Drag.PRESSED && distance(start, event) >= SHAKE) {
      boolean taken =
          mainButton && canvas.pointer(start).map(canvas.tool()::dragBegins).orElse(false);
      drag = taken ? Drag.TOOL : Drag.PAN;
    }
    if (drag == Drag.TOOL) {
      canvas.pointer(event).ifPresent(canvas.tool()::dragged);
    } else if (drag == Drag.PAN && before != null) {
      ViewState to = canvas.moved(before, event.getX() - start.getX(), event.getY() - start.getY());
      if (!canvas.moveTo(to)) {
        forget(); // something is to be read first, and the drag is over by then
      }
    }
  }

  @Override
  public void mouseReleased(MouseEvent event) {
    if (!canvas.interactive()) {
      passOn(event);
      return;
    }
    if (event.isPopupTrigger() && drag == Drag.NONE) {
      canvas.pointer(event).ifPresent(canvas.tool()::menu);
      return;
    }
    Drag ended = drag;
    MouseEvent start = pressed;
    forget();
    if (ended == Drag.TOOL) {
      canvas.pointer(event).ifPresent(canvas.tool()::dropped);
    } else if (ended == Drag.PRESSED && mainButton && start != null) {
      canvas.pointer(start).ifPresent(canvas.tool()::click);
    }
  }

  /** Gives up a drag; true where there was one. */
  boolean cancel() {
    Drag ended = drag;
    ViewState view = before;
    forget();
    if (ended == Drag.TOOL) {
      canvas.tool().dragCancelled();
    } else if (ended == Drag.PAN && view != null) {
      canvas.setView(view);
    }
    return ended == Drag.TOOL || ended == Drag.PAN;
  }

  private void forget() {
    drag = Drag.NONE;
    pressed = null;
    before = null;
  }

  @Override
  public void mouseMoved(MouseEvent event) {
    follow(event);
    if (canvas.interactive()) {
      canvas.pointer(event).ifPresent(canvas.tool()::moved);
    } else {
      passOn(event);
    }
  }

  @Override
  public void mouseClicked(MouseEvent event) {
    if (!canvas.interactive()) {
      passOn(event);
    }
  }

  @Override
  public void mouseEntered(MouseEvent event) {
    if (!canvas.interactive()) {
      passOn(event);
    }
  }

  @Override
  public void mouseExited(MouseEvent event) {
    canvas.moveLoupe(Optional.empty());
    if (canvas.interactive()) {
      canvas.tool().left();
    } else {
      passOn(event);
    }
  }

  @Override
  public void mouseWheelMoved(MouseWheelEvent event) {
    if (!canvas.interactive()) {
      passOn(event);
      return;
    }
    ScreenPoint at = new ScreenPoint(event.getX(), event.getY());
    double factor = Math.pow(ZOOM_PER_NOTCH, -event.getPreciseWheelRotation());
    canvas.view().ifPresent(now -> canvas.moveTo(now.zoomedBy(factor, at)));
    if (drag == Drag.PAN) {
      forget(); // the place where the drag began lies elsewhere now
    }
  }

  private void follow(MouseEvent event) {
    if (canvas.interactive()) {
      canvas.moveLoupe(Optional.of(new ScreenPoint(event.getX(), event.getY())));
    }
  }

  /** A picture that isn't touched itself leaves the mouse to what it lies on. */
  private void passOn(MouseEvent event) {
    Component parent = canvas.getParent();
    if (parent != null) {
      parent.dispatchEvent(SwingUtilities.convertMouseEvent(canvas, event, parent));
    }
  }

  private static double distance(MouseEvent from, MouseEvent to) {
    return Math.hypot(to.getX() - from.getX(), to.getY() - from.getY());
  }
}
