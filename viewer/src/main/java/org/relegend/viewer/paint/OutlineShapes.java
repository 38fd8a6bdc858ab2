package org.relegend.viewer.paint;

import java.awt.geom.Path2D;
import java.util.List;
import org.relegend.map.Point;

/** Shapes made of points. */
final class OutlineShapes {
  private OutlineShapes() {}

  /** The polygon through some points, closed. */
  static Path2D closed(List<Point> points) {
    Path2D path = new Path2D.Double();
    for (Point point : points) {
      if (path.getCurrentPoint() == null) {
        path.moveTo(point.x(), point.y());
      } else {
        path.lineTo(point.x(), point.y());
      }
    }
    if (path.getCurrentPoint() != null) {
      path.closePath();
    }
    return path;
  }
}
