package org.relegend.viewer.ui;

import java.awt.event.ActionEvent;
import java.util.Locale;
import java.util.function.UnaryOperator;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/** What the keyboard does on a canvas that has the focus; menus use the same actions by name. */
final class CanvasKeys {
  private static final double ZOOM_STEP = 1.25;

  /** Component pixels that an arrow key pans. */
  private static final double STEP = 48;

  private CanvasKeys() {}

  static void install(PictureCanvas canvas) {
    view(canvas, "zoom-in", now -> now.zoomedBy(ZOOM_STEP, middle(now)), "typed +", "typed =");
    view(canvas, "zoom-out", now -> now.zoomedBy(1 / ZOOM_STEP, middle(now)), "typed -");
    view(canvas, "fit", ViewState::fitted, "typed 0");
    view(canvas, "actual-size", now -> now.zoomedTo(canvas.actualScale(), middle(now)), "typed 1");
    pan(canvas, "left", STEP, 0);
    pan(canvas, "right", -STEP, 0);
    pan(canvas, "up", 0, STEP);
    pan(canvas, "down", 0, -STEP);
    act(canvas, "click-middle", canvas::clickMiddle, "SPACE", "ENTER");
    act(canvas, "loupe", () -> canvas.setLoupe(!canvas.loupe()), "L");
    act(canvas, "cancel-drag", canvas::cancelDrag, "ESCAPE");
  }

  private static void pan(PictureCanvas canvas, String direction, double dx, double dy) {
    String name = "pan-" + direction;
    act(
        canvas,
        name,
        () -> {
          canvas.showMiddle();
          canvas.view().ifPresent(now -> canvas.moveTo(canvas.moved(now, dx, dy)));
        },
        direction.toUpperCase(Locale.ROOT));
  }

  private static void view(
      PictureCanvas canvas, String name, UnaryOperator<ViewState> change, String... keys) {
    act(canvas, name, () -> canvas.view().ifPresent(now -> canvas.moveTo(change.apply(now))), keys);
  }

  private static void act(PictureCanvas canvas, String name, Runnable what, String... keys) {
    canvas
        .getActionMap()
        .put(
            name,
            new AbstractAction(name) {
              @Override
              public void actionPerformed(ActionEvent event) {
                what.run();
              }
            });
    for (String key : keys) {
      canvas.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), name);
    }
  }

  private static ScreenPoint middle(ViewState view) {
    return new ScreenPoint(view.width() / 2.0, view.height() / 2.0);
  }
}
