package org.relegend.viewer.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.List;
import org.relegend.map.HazardZone;
import org.relegend.map.Point;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/** Hazard zones: always the last thing painted over a picture. */
public final class HazardOverlay implements Overlay {
  private final List<HazardZone> zones;

  public HazardOverlay(List<HazardZone> zones) {
    this.zones = List.copyOf(zones);
  }

  /** The zones a point lies in. */
  public List<HazardZone> at(Point point) {
    return zones.stream().filter(zone -> path(zone).contains(point.x(), point.y())).toList();
  }

  @Override
  public void paint(Graphics2D g, ViewState painted) {
    for (HazardZone zone : zones) {
      Path2D there = new Path2D.Double(path(zone), painted.transform());
      g.setStroke(new BasicStroke(6));
      g.setColor(Palette.WARNING_BLACK);
      g.draw(there);
      g.setStroke(new BasicStroke(3));
      g.setColor(Palette.WARNING_YELLOW);
      g.draw(there);
      ScreenPoint first = painted.toScreen(zone.outline().get(0));
      g.drawString(zone.kind().word(), (float) first.x(), (float) first.y());
    }
  }

  private static Path2D path(HazardZone zone) {
    Path2D path = new Path2D.Double();
    for (Point corner : zone.outline()) {
      if (path.getCurrentPoint() == null) {
        path.moveTo(corner.x(), corner.y());
      } else {
        path.lineTo(corner.x(), corner.y());
      }
    }
    path.closePath();
    return path;
  }
}
