package org.relegend.sheet;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.relegend.map.HazardZone;

/**
 * Hazard zones on a cut-out: a band of black and yellow along the outline and a triangle with the
 * kind in words, in the colours of ISO 3864-4 and after ISO 7010 W012 and W001, drawn by us.
 * Printed without colour the band is black and light grey, and the words stay.
 */
final class PrintedZones {
  static final Color YELLOW = new Color(0xF9A800);
  private static final double BAND = 3.6;
  private static final float DASH = 5;
  private static final double SIGN = 20;
  private static final double HEIGHT = Math.sqrt(3) / 2;
  private static final double SIZE = 7;

  /** Length of the pieces a band is cut into where labels look for a place. */
  private static final double PIECE = 6;

  private static final int MOST_PIECES = 200;

  /** Places in each direction that are tried for a sign. */
  private static final int TRIED = 7;

  /** A zone as seen in the window. */
  private record Seen(HazardZone.Kind kind, Path2D outline, Rectangle2D sign) {}

  private final SheetPage leaf;
  private final PrintWindow window;
  private final List<Seen> seen = new ArrayList<>();

  /** What of these zones lies in the window. */
  PrintedZones(SheetPage leaf, PrintWindow window, List<HazardZone> zones) {
    this.leaf = leaf;
    this.window = window;
    for (HazardZone zone : zones) {
      Path2D there = new Path2D.Double(MarkPainter.closed(zone.outline()), window.transform());
      Area shown = new Area(there);
      shown.intersect(new Area(window.frame()));
      if (!shown.isEmpty()) {
        seen.add(new Seen(zone.kind(), there, place(zone.kind(), shown.getBounds2D())));
      }
    }
  }

  static String words(HazardZone.Kind kind) {
    return kind.word().replace('-', ' ').toUpperCase(Locale.ROOT);
  }

  /** What is drawn over everything: signs and pieces of the bands. */
  List<Rectangle2D> covered() {
    List<Rectangle2D> covered = signs();
    for (Seen zone : seen) {
      pieces(zone.outline(), covered);
    }
    return covered;
  }

  private static void pieces(Path2D outline, List<Rectangle2D> covered) {
    double[] at = new double[6];
    double[] start = new double[2];
    double[] last = new double[2];
    for (PathIterator path = outline.getPathIterator(null); !path.isDone(); path.next()) {
      int kind = path.currentSegment(at);
      double[] end = kind == PathIterator.SEG_CLOSE ? start : at;
      if (kind == PathIterator.SEG_MOVETO) {
        start = new double[] {at[0], at[1]};
      } else {
        double length = Math.hypot(end[0] - last[0], end[1] - last[1]);
        int count = Math.min(MOST_PIECES, (int) (length / PIECE) + 1);
        for (int i = 0; i <= count; i++) {
          double x = last[0] + (end[0] - last[0]) * i / count;
          double y = last[1] + (end[1] - last[1]) * i / count;
          covered.add(new Rectangle2D.Double(x - PIECE / 2, y - PIECE / 2, PIECE, PIECE));
        }
      }
      last = new double[] {end[0], end[1]};
    }
  }

  private List<Rectangle2D> signs() {
    return seen.stream().map(Seen::sign).collect(Collectors.toCollection(ArrayList::new));
  }

  /** Inside of the frame, over the zone, clear of other signs if there is such a place. */
  private Rectangle2D place(HazardZone.Kind kind, Rectangle2D zone) {
    double width = SIGN + leaf.face().width(words(kind), SIZE) + 6;
    Rectangle2D frame = window.frame();
    List<Rectangle2D> tried = new ArrayList<>();
    for (int i = 0; i < TRIED * TRIED; i++) {
      // from the middle outwards: 0, 1, -1, 2, -2 ...
      double down = (i / TRIED + 1) / 2 * (i / TRIED % 2 == 0 ? -1 : 1) / (TRIED - 1.0);
      double along = (i % TRIED + 1) / 2 * (i % TRIED % 2 == 0 ? -1 : 1) / (TRIED - 1.0);
      double x = zone.getCenterX() + along * zone.getWidth() - width / 2;
      double y = zone.getCenterY() + down * zone.getHeight() - SIGN / 2;
      tried.add(
          new Rectangle2D.Double(
              clamped(x, frame.getX() + 2, frame.getMaxX() - width - 2),
              clamped(y, frame.getY() + 2, frame.getMaxY() - SIGN - 2),
              width,
              SIGN));
    }
    List<Rectangle2D> taken = signs();
    return tried.stream()
        .min(Comparator.comparingDouble(sign -> MarkPainter.crowding(sign, taken)))
        .orElseThrow();
  }

  private static double clamped(double value, double least, double most) {
    return Math.max(least, Math.min(Math.max(least, most), value));
  }

  void draw() {
    leaf.clipped(
        window.frame(),
        () -> {
          seen.forEach(zone -> band(zone.outline()));
          seen.forEach(this::sign);
        });
  }

  private void band(Shape outline) {
    leaf.stroke(outline, BAND + 3, Color.WHITE);
    leaf.stroke(outline, BAND + 1.4, Color.BLACK);
    leaf.stroke(outline, BAND, YELLOW, DASH);
  }

  private void sign(Seen zone) {
    Rectangle2D sign = zone.sign();
    double y = sign.getCenterY();
    Rectangle2D plate =
        new Rectangle2D.Double(sign.getX() + SIGN - 2, y - 5, sign.getWidth() - SIGN + 2, 10);
    leaf.fill(plate, Color.WHITE);
    leaf.stroke(plate, 0.8, Color.BLACK);
    leaf.text(words(zone.kind()), sign.getX() + SIGN + 2, y + 2.6, SIZE, true);
    triangle(leaf, zone.kind(), sign.getX() + SIGN / 2, y + SIGN * 0.12, SIGN);
  }

  /** The warning triangle, its middle of gravity at a place, with sides of so many points. */
  static void triangle(SheetPage leaf, HazardZone.Kind kind, double x, double y, double side) {
    AffineTransform to = new AffineTransform(side, 0, 0, side, x, y);
    Shape edge =
        to.createTransformedShape(polygon(0, -HEIGHT * 2 / 3, 0.5, HEIGHT / 3, -0.5, HEIGHT / 3));
    leaf.stroke(edge, side * 0.07 + 2, Color.WHITE);
    leaf.fill(edge, YELLOW);
    leaf.stroke(edge, side * 0.07, Color.BLACK);
    leaf.fill(to.createTransformedShape(symbol(kind)), Color.BLACK);
  }

  private static Shape symbol(HazardZone.Kind kind) {
    return switch (kind) {
      case HOT -> exclamation();
      case SUBSTANCE -> ToxicSign.shape();
      case MAINS, HIGH_VOLTAGE, STORED_CHARGE -> flash();
    };
  }

  /** A zigzag from above that ends in an arrowhead. */
  private static Path2D flash() {
    return polygon(
        0.04, -0.36, 0.115, -0.34, 0.035, -0.085, 0.135, -0.055, 0.0, 0.13, 0.05, 0.145, -0.055,
        0.25, -0.095, 0.105, -0.05, 0.117, 0.04, -0.005, -0.07, -0.035);
  }

  private static Shape exclamation() {
    Path2D mark = polygon(-0.045, -0.3, 0.045, -0.3, 0.028, 0.04, -0.028, 0.04);
    mark.append(new Ellipse2D.Double(-0.045, 0.1, 0.09, 0.09), false);
    return mark;
  }

  private static Path2D polygon(double... coordinates) {
    Path2D path = new Path2D.Double();
    path.moveTo(coordinates[0], coordinates[1]);
    for (int i = 2; i < coordinates.length; i += 2) {
      path.lineTo(coordinates[i], coordinates[i + 1]);
    }
    path.closePath();
    return path;
  }
}
