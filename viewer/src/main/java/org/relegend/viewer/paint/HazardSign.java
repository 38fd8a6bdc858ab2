package org.relegend.viewer.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import org.relegend.map.HazardZone;
import org.relegend.sheet.ToxicSign;

/**
 * The warning triangle: black on yellow with a black border, as ISO 3864 has it; inside a flash
 * that ends in an arrow, after ISO 7010 W012 (electricity), for heat an exclamation mark, after ISO
 * 7010 W001 (general warning), for substances a skull, after W016 (toxic material). Drawn by us; at
 * least half of its face is yellow, as ISO 3864-1 asks.
 */
final class HazardSign {
  /** Height of the triangle where its side is 1. */
  private static final double HEIGHT = Math.sqrt(3) / 2;

  private HazardSign() {}

  /** Draws it about a point, with sides of so many component pixels. */
  static void draw(Graphics2D g, HazardZone.Kind kind, double x, double y, double side) {
    AffineTransform to = new AffineTransform(side, 0, 0, side, x, y);
    Shape triangle = to.createTransformedShape(triangle());
    float border = (float) (side * 0.07);
    g.setStroke(round(border + 4));
    g.setColor(HaloStroke.LIGHT);
    g.draw(triangle);
    g.setStroke(round(border));
    g.setColor(Palette.WARNING_BLACK);
    g.draw(triangle);
    g.setColor(Palette.WARNING_YELLOW);
    g.fill(to.createTransformedShape(face()));
    g.setColor(Palette.WARNING_BLACK);
    g.fill(to.createTransformedShape(symbol(kind)));
  }

  private static Shape symbol(HazardZone.Kind kind) {
    return switch (kind) {
      case HOT -> exclamation();
      case SUBSTANCE -> ToxicSign.shape();
      case MAINS, HIGH_VOLTAGE, STORED_CHARGE -> flash();
    };
  }

  private static BasicStroke round(float width) {
    return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  }

  /** Equal sides of length 1, standing on one, its middle of gravity at the origin. */
  private static Path2D triangle() {
    return polygon(0, -HEIGHT * 2 / 3, 0.5, HEIGHT / 3, -0.5, HEIGHT / 3);
  }

  /** The yellow face inside of the border. */
  private static Shape face() {
    return AffineTransform.getScaleInstance(0.9, 0.9).createTransformedShape(triangle());
  }

  /** A zigzag from above that ends in an arrowhead. */
  static Path2D flash() {
    return polygon(
        0.045, -0.36, 0.115, -0.34, 0.035, -0.085, 0.135, -0.055, 0.0, 0.13, 0.05, 0.145, -0.055,
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
