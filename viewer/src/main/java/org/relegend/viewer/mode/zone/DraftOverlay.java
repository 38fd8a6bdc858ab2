package org.relegend.viewer.mode.zone;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.Optional;
import org.relegend.map.Point;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.paint.Palette;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/** The outline of a hazard zone as far as it is drawn, with a thread to the pointer. */
public record DraftOverlay(List<Point> corners, Optional<Point> pointer) implements Overlay {
  private static final int HANDLE = 9;

  @Override
  public void paint(Graphics2D g, ViewState painted) {
    Path2D path = new Path2D.Double();
    for (Point corner : corners) {
      ScreenPoint at = painted.toScreen(corner);
      if (path.getCurrentPoint() == null) {
        path.moveTo(at.x(), at.y());
      } else {
        path.lineTo(at.x(), at.y());
      }
    }
    pointer
        .map(painted::toScreen)
        .ifPresent(
            at -> {
              path.lineTo(at.x(), at.y());
              path.closePath();
            });
    g.setColor(Palette.WARNING_BLACK);
    g.setStroke(new BasicStroke(5));
    g.draw(path);
    g.setColor(Palette.WARNING_YELLOW);
    g.setStroke(
        new BasicStroke(3, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {8, 5}, 0));
    g.draw(path);
    corners.forEach(corner -> paintHandle(g, painted.toScreen(corner)));
  }

  private static void paintHandle(Graphics2D g, ScreenPoint at) {
    int x = (int) Math.round(at.x()) - HANDLE / 2;
    int y = (int) Math.round(at.y()) - HANDLE / 2;
    g.setColor(Palette.WARNING_YELLOW);
    g.fillRect(x, y, HANDLE, HANDLE);
    g.setColor(Palette.WARNING_BLACK);
    g.setStroke(new BasicStroke(1.5f));
    g.drawRect(x, y, HANDLE, HANDLE);
  }
}
