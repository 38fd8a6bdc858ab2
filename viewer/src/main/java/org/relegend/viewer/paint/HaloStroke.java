package org.relegend.viewer.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;

/**
 * Draws lines that can be seen on any ground: a colour, a black line around it and a white one
 * around that. Whatever a photo shows beside it, one of the two has a contrast of 4.58 : 1 or more
 * to it (the root of 21, the contrast of black to white), where WCAG 2.2 asks for 3 : 1.
 */
final class HaloStroke {
  static final Color DARK = Palette.BLACK;
  static final Color LIGHT = Color.WHITE;

  /** Width of the black and of the white line, each side. */
  static final float EDGE = 1.25f;

  private HaloStroke() {}

  /** Draws a line of a width and colour, with its edges outside of it. */
  static void line(Graphics2D g, Shape shape, float width, Color colour) {
    line(g, shape, width, colour, new float[0]);
  }

  /** A dashed line; its gaps show the black edge. */
  static void line(Graphics2D g, Shape shape, float width, Color colour, float[] dashes) {
    stroke(g, shape, width + 4 * EDGE, LIGHT, new float[0]);
    stroke(g, shape, width + 2 * EDGE, DARK, new float[0]);
    stroke(g, shape, width, colour, dashes);
  }

  /** Fills a shape, with its edges outside of it. */
  static void fill(Graphics2D g, Shape shape, Color colour) {
    stroke(g, shape, 4 * EDGE, LIGHT, new float[0]);
    stroke(g, shape, 2 * EDGE, DARK, new float[0]);
    g.setColor(colour);
    g.fill(shape);
  }

  /** The least that can still be seen on any ground: black beside white, a pixel each. */
  static void hairline(Graphics2D g, Shape shape) {
    stroke(g, shape, 2.5f, LIGHT, new float[0]);
    stroke(g, shape, 1, DARK, new float[0]);
  }

  /** The same for a point. */
  static void speck(Graphics2D g, double x, double y) {
    g.setColor(LIGHT);
    g.fill(new Rectangle2D.Double(x - 2, y - 2, 4, 4));
    g.setColor(DARK);
    g.fill(new Rectangle2D.Double(x - 1, y - 1, 2, 2));
  }

  private static void stroke(Graphics2D g, Shape shape, float width, Color colour, float[] dashes) {
    g.setColor(colour);
    g.setStroke(
        dashes.length == 0
            ? new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
            : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0));
    g.draw(shape);
  }
}
