package org.relegend.lineup;

import java.awt.BasicStroke;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.relegend.map.Picture;
import org.relegend.map.Point;

/** Outlines made larger all round, in picture units. */
final class GrownOutline {
  /** How far chords may cut a rounded corner, as a share of the margin, which makes up for it. */
  private static final double FLAT = 0.05;

  private GrownOutline() {}

  /**
   * All places of a picture within a margin of an outlined region, that region included: one
   * outline, or several where the picture's edge cuts it; none where it lies wholly outside.
   * Nothing of the region is left out; holes are filled.
   */
  static List<List<Point>> of(List<Point> outline, double margin, Picture picture) {
    Path2D path = path(outline);
    Area grown = new Area(path);
    if (margin > 0) {
      float width = (float) (2 * margin * (1 + 2 * FLAT));
      grown.add(
          new Area(
              new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                  .createStrokedShape(path)));
    }
    grown.intersect(new Area(new Rectangle2D.Double(0, 0, picture.width(), picture.height())));
    Area filled = new Area();
    loops(grown, margin).forEach(loop -> filled.add(new Area(path(loop))));
    return loops(filled, margin);
  }

  private static Path2D path(List<Point> outline) {
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    path.moveTo(outline.get(0).x(), outline.get(0).y());
    outline.stream().skip(1).forEach(point -> path.lineTo(point.x(), point.y()));
    path.closePath();
    return path;
  }

  private static List<List<Point>> loops(Area area, double margin) {
    List<List<Point>> loops = new ArrayList<>();
    List<Point> loop = new ArrayList<>();
    double[] at = new double[6];
    for (PathIterator i = area.getPathIterator(null, Math.max(margin * FLAT, 1e-3));
        !i.isDone();
        i.next()) {
      switch (i.currentSegment(at)) {
        case PathIterator.SEG_CLOSE -> {
          if (loop.size() >= 3) {
            loops.add(List.copyOf(loop));
          }
          loop.clear();
        }
        default -> {
          Point corner = new Point(at[0], at[1]);
          if (loop.isEmpty() || loop.get(loop.size() - 1).distance(corner) > 1e-6) {
            loop.add(corner);
          }
        }
      }
    }
    return loops;
  }
}
