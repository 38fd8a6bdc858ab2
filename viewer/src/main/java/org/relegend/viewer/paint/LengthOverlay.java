package org.relegend.viewer.paint;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.List;
import org.relegend.map.Point;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/**
 * A distance between two points, with its length beside it; or its first point.
 *
 * @param points one or two
 */
public record LengthOverlay(List<Point> points, String text) implements Overlay {
  private static final double RADIUS = 4;

  public LengthOverlay {
    points = List.copyOf(points);
  }

  @Override
  public void paint(Graphics2D g, ViewState painted) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    List<ScreenPoint> ends = points.stream().map(painted::toScreen).toList();
    if (ends.size() == 2) {
      ScreenPoint a = ends.get(0);
      ScreenPoint b = ends.get(1);
      HaloStroke.line(g, new Line2D.Double(a.x(), a.y(), b.x(), b.y()), 1.5f, Palette.YELLOW);
      if (!text.isEmpty()) {
        new SpriteCache()
            .labelAbout(
                g, text, Mark.Emphasis.SELECTED, (a.x() + b.x()) / 2, (a.y() + b.y()) / 2 - 14);
      }
    }
    for (ScreenPoint end : ends) {
      HaloStroke.line(
          g,
          new Ellipse2D.Double(end.x() - RADIUS, end.y() - RADIUS, 2 * RADIUS, 2 * RADIUS),
          1.5f,
          Palette.YELLOW);
    }
  }
}
