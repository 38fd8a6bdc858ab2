package org.relegend.demo.ray;

/** A body's own coordinates: an origin and three unit axes at right angles. */
public record Frame(Vec origin, Vec u, Vec v, Vec w) {
  /** Upright at a point, turned about the vertical by an angle in degrees. */
  public static Frame upright(Vec origin, double degrees) {
    double angle = StrictMath.toRadians(degrees);
    double c = StrictMath.cos(angle);
    double s = StrictMath.sin(angle);
    return new Frame(origin, new Vec(c, s, 0), new Vec(-s, c, 0), new Vec(0, 0, 1));
  }

  /** With w along a direction; u stays as level as it can. */
  public static Frame along(Vec origin, Vec direction) {
    Vec w = direction.unit();
    Vec level = Math.abs(w.z()) > 0.99 ? new Vec(1, 0, 0) : new Vec(0, 0, 1).cross(w).unit();
    Vec u = level.minus(w.times(level.dot(w))).unit();
    return new Frame(origin, u, w.cross(u), w);
  }

  /** Tipped: w leans by so many degrees towards u and towards v. */
  public Frame leaning(double towardsU, double towardsV) {
    double a = StrictMath.tan(StrictMath.toRadians(towardsU));
    double b = StrictMath.tan(StrictMath.toRadians(towardsV));
    Vec leaned = w.plus(u.times(a)).plus(v.times(b)).unit();
    Vec side = u.minus(leaned.times(u.dot(leaned))).unit();
    return new Frame(origin, side, leaned.cross(side), leaned);
  }

  public Frame at(double a, double b, double c) {
    return new Frame(point(a, b, c), u, v, w);
  }

  /** The point with the given own coordinates. */
  public Vec point(double a, double b, double c) {
    return origin.plus(u.times(a)).plus(v.times(b)).plus(w.times(c));
  }

  /** The direction with the given own coordinates. */
  public Vec direction(double a, double b, double c) {
    return u.times(a).plus(v.times(b)).plus(w.times(c));
  }
}
