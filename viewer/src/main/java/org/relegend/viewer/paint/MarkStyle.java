package org.relegend.viewer.paint;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * How each emphasis looks. Shape and size tell what colour tells, so that nothing is lost to those
 * who can't tell the colours apart, or in print without colour.
 *
 * @param colour of lines and fillings
 * @param radius of a pad's sign in component pixels
 * @param line width of a body's outline in component pixels
 * @param pattern of that line
 * @param filled whether a pad's sign is filled or a ring
 */
record MarkStyle(Color colour, double radius, float line, Pattern pattern, boolean filled) {
  /** How a line is broken. */
  enum Pattern {
    FULL(0, 0),
    DASHED(8, 4),
    DOTTED(2, 4),
    /** What was carried over from another picture. */
    CARRIED(12, 6),
    /** What was only concluded or guessed. */
    WEAK(3, 3);

    private final float drawn;
    private final float left;

    Pattern(float drawn, float left) {
      this.drawn = drawn;
      this.left = left;
    }

    /** For a stroke; empty for a full line. */
    float[] dashes() {
      return drawn == 0 ? new float[0] : new float[] {drawn, left};
    }
  }

  static MarkStyle of(Mark.Emphasis emphasis) {
    return switch (emphasis) {
      case PLAIN -> new MarkStyle(Palette.SKY_BLUE, 3.5, 1.25f, Pattern.FULL, false);
      case JOINED -> new MarkStyle(Palette.ORANGE, 5.5, 2.5f, Pattern.FULL, true);
      case SELECTED -> new MarkStyle(Palette.YELLOW, 7.5, 4.5f, Pattern.FULL, true);
      case TWIN -> new MarkStyle(Palette.BLUISH_GREEN, 6, 2.5f, Pattern.DASHED, true);
      case SUSPECT -> new MarkStyle(Palette.REDDISH_PURPLE, 7, 2.5f, Pattern.DOTTED, true);
    };
  }

  /** Round for what is and what is joined, a square for the twin, a diamond for a suspect. */
  static Shape sign(Mark.Emphasis emphasis, double radius) {
    return switch (emphasis) {
      case PLAIN, JOINED, SELECTED ->
          new Ellipse2D.Double(-radius, -radius, 2 * radius, 2 * radius);
      case TWIN -> new Rectangle2D.Double(-radius, -radius, 2 * radius, 2 * radius);
      case SUSPECT -> diamond(radius * 1.2);
    };
  }

  /** For what was carried over: a triangle, whatever the emphasis. */
  static Shape carriedSign(double radius) {
    double reach = radius * 1.3;
    Path2D path = new Path2D.Double();
    path.moveTo(0, -reach);
    path.lineTo(0.87 * reach, reach / 2);
    path.lineTo(-0.87 * reach, reach / 2);
    path.closePath();
    return path;
  }

  private static Shape diamond(double radius) {
    Path2D path = new Path2D.Double();
    path.moveTo(0, -radius);
    path.lineTo(radius, 0);
    path.lineTo(0, radius);
    path.lineTo(-radius, 0);
    path.closePath();
    return path;
  }
}
