package org.relegend.sheet;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.relegend.map.Point;

/**
 * Draws marks on a cut-out: black with a white edge, so that they show on light and dark, in colour
 * and without. Each label stands on a white plate where it hides no other mark if there is such a
 * place, and a line leads from it to what it means.
 */
final class MarkPainter {
  static final double RING = 3.4;
  private static final double SIZE = 7;
  private static final double PLATE = 9.5;

  /** Distances of a label from its mark that are tried, in points. */
  private static final double[] DISTANCES = {14, 20, 28, 38, 50};

  private static final int DIRECTIONS = 12;

  /** A mark with its label's place. */
  private record Set(PrintedMark mark, Point at, Rectangle2D plate) {}

  private final SheetPage leaf;
  private final PrintWindow window;
  private final List<Rectangle2D> taken = new ArrayList<>();

  /**
   * Marks on one cut-out.
   *
   * @param kept what no label should hide or be hidden by
   */
  MarkPainter(SheetPage leaf, PrintWindow window, List<Rectangle2D> kept) {
    this.leaf = leaf;
    this.window = window;
    taken.addAll(kept);
  }

  /** Draws them; those outside of what is shown are left out. */
  void draw(List<PrintedMark> marks) {
    List<PrintedMark> seen =
        marks.stream().filter(mark -> window.shown().contains(mark.at())).toList();
    for (PrintedMark mark : seen) {
      taken.add(square(window.onLeaf(mark.at()), RING + 1));
    }
    List<Set> sets = seen.stream().map(mark -> set(mark, window.onLeaf(mark.at()))).toList();
    leaf.clipped(window.frame(), () -> sets.forEach(this::drawPlace));
    sets.forEach(this::drawLabel);
  }

  private Set set(PrintedMark mark, Point at) {
    double width = leaf.face().width(leaf.face().printable(mark.label()), SIZE) + 5;
    Rectangle2D plate =
        candidates(at, width).stream()
            .min(Comparator.comparingDouble(place -> crowding(place, taken)))
            .orElseThrow();
    taken.add(plate);
    return new Set(mark, at, plate);
  }

  /** Places for a label, nearest first, all inside of the frame. */
  private List<Rectangle2D> candidates(Point at, double width) {
    List<Rectangle2D> places = new ArrayList<>();
    Rectangle2D frame = window.frame();
    for (double distance : DISTANCES) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double angle = 2 * StrictMath.PI * (i + 0.5) / DIRECTIONS - StrictMath.PI / 2;
        double reach = distance + (width / 2 - PLATE / 2) * Math.abs(StrictMath.cos(angle));
        double x = at.x() + reach * StrictMath.cos(angle) - width / 2;
        double y = at.y() + distance * StrictMath.sin(angle) - PLATE / 2;
        places.add(
            new Rectangle2D.Double(
                Math.max(frame.getX() + 1, Math.min(frame.getMaxX() - width - 1, x)),
                Math.max(frame.getY() + 1, Math.min(frame.getMaxY() - PLATE - 1, y)),
                width,
                PLATE));
      }
    }
    return places;
  }

  /** How much of a place is taken, in square points. */
  static double crowding(Rectangle2D place, List<Rectangle2D> taken) {
    double sum = 0;
    for (Rectangle2D other : taken) {
      Rectangle2D both = place.createIntersection(other);
      sum += both.getWidth() > 0 && both.getHeight() > 0 ? both.getWidth() * both.getHeight() : 0;
    }
    return sum;
  }

  private void drawPlace(Set set) {
    Shape shape = shape(set);
    leaf.stroke(shape, 2.6, Color.WHITE);
    leaf.stroke(shape, 1.1, Color.BLACK);
  }

  private Shape shape(Set set) {
    if (set.mark().pad()) {
      return new Ellipse2D.Double(set.at().x() - RING, set.at().y() - RING, 2 * RING, 2 * RING);
    }
    if (set.mark().outline().size() < 3) {
      return square(set.at(), RING);
    }
    return new Path2D.Double(closed(set.mark().outline()), window.transform());
  }

  static Path2D closed(List<Point> outline) {
    Path2D path = new Path2D.Double();
    path.moveTo(outline.get(0).x(), outline.get(0).y());
    outline.stream().skip(1).forEach(point -> path.lineTo(point.x(), point.y()));
    path.closePath();
    return path;
  }

  private static Rectangle2D square(Point at, double half) {
    return new Rectangle2D.Double(at.x() - half, at.y() - half, 2 * half, 2 * half);
  }

  private void drawLabel(Set set) {
    Rectangle2D plate = set.plate();
    Line2D way = way(set);
    leaf.stroke(way, 2.2, Color.WHITE);
    leaf.stroke(way, 0.8, Color.BLACK);
    Shape round =
        new RoundRectangle2D.Double(
            plate.getX(), plate.getY(), plate.getWidth(), plate.getHeight(), 4, 4);
    leaf.fill(round, Color.WHITE);
    leaf.stroke(round, 0.8, Color.BLACK);
    leaf.text(set.mark().label(), plate.getX() + 2.5, plate.getMaxY() - 2.3, SIZE, true);
  }

  /** From the label's middle to the mark's edge. */
  private Line2D way(Set set) {
    double x = set.plate().getCenterX();
    double y = set.plate().getCenterY();
    double length = Math.hypot(set.at().x() - x, set.at().y() - y);
    double rest = length == 0 ? 0 : Math.max(0, 1 - RING / length);
    return new Line2D.Double(x, y, x + (set.at().x() - x) * rest, y + (set.at().y() - y) * rest);
  }
}
