package org.relegend.sheet;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * A skull over crossed bones, after ISO 7010 W016 (toxic material), drawn by us: black, for the
 * face of a warning triangle whose sides are 1 and whose middle of gravity is the origin, y down.
 */
public final class ToxicSign {
  private static final double BONE = 0.42;
  private static final double THICK = 0.045;
  private static final double KNOB = 0.034;

  /** The angle of a bone to the base, in radians, and how far below the origin they cross. */
  private static final double SLANT = Math.toRadians(24);

  private static final double CROSSING = 0.155;

  /** Small enough that more than half of the triangle stays yellow, as ISO 3864-1 wants it. */
  private static final double SIZE = 0.88;

  private ToxicSign() {}

  /** The sign, to be filled in black. */
  public static Shape shape() {
    Area sign = new Area(skull());
    sign.add(bone(SLANT));
    sign.add(bone(-SLANT));
    sign.transform(AffineTransform.getScaleInstance(SIZE, SIZE));
    return sign;
  }

  private static Area skull() {
    Area skull = new Area(circle(0, -0.12, 0.115));
    skull.add(new Area(new Rectangle2D.Double(-0.06, -0.06, 0.12, 0.1)));
    skull.subtract(new Area(circle(-0.045, -0.115, 0.03)));
    skull.subtract(new Area(circle(0.045, -0.115, 0.03)));
    Path2D nose = new Path2D.Double();
    nose.moveTo(0, -0.075);
    nose.lineTo(0.02, -0.035);
    nose.lineTo(-0.02, -0.035);
    nose.closePath();
    skull.subtract(new Area(nose));
    for (double x : new double[] {-0.025, 0.01}) {
      skull.subtract(new Area(new Rectangle2D.Double(x, 0, 0.015, 0.04)));
    }
    return skull;
  }

  private static Area bone(double slant) {
    Area bone = new Area(new Rectangle2D.Double(-BONE / 2, -THICK / 2, BONE, THICK));
    for (double end : new double[] {-BONE / 2, BONE / 2}) {
      bone.add(new Area(circle(end, -KNOB * 0.7, KNOB)));
      bone.add(new Area(circle(end, KNOB * 0.7, KNOB)));
    }
    AffineTransform to = AffineTransform.getTranslateInstance(0, CROSSING);
    to.rotate(slant);
    bone.transform(to);
    return bone;
  }

  private static Ellipse2D circle(double x, double y, double radius) {
    return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
  }
}
