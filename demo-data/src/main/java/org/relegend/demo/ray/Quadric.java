package org.relegend.demo.ray;

/**
 * An ellipsoid, or an endless cylinder along w, about a frame's origin; radii in millimetres along
 * u, v and (ellipsoid) w.
 */
final class Quadric {
  private final double cx;
  private final double cy;
  private final double cz;
  private final double[] rows;
  private final boolean round;

  private Quadric(Frame frame, double a, double b, double c, boolean round) {
    cx = frame.origin().x();
    cy = frame.origin().y();
    cz = frame.origin().z();
    Vec u = frame.u().times(1 / a);
    Vec v = frame.v().times(1 / b);
    Vec w = frame.w().times(1 / c);
    rows = new double[] {u.x(), u.y(), u.z(), v.x(), v.y(), v.z(), w.x(), w.y(), w.z()};
    this.round = round;
  }

  static Quadric ellipsoid(Frame frame, double a, double b, double c) {
    return new Quadric(frame, a, b, c, true);
  }

  static Quadric cylinder(Frame frame, double a, double b) {
    return new Quadric(frame, a, b, 1, false);
  }

  /** Narrows the hit's open interval to what lies inside; false if nothing is left. */
  boolean narrow(Ray ray, Hit hit, int face) {
    double px = ray.ox - cx;
    double py = ray.oy - cy;
    double pz = ray.oz - cz;
    double ax = rows[0] * px + rows[1] * py + rows[2] * pz;
    double ay = rows[3] * px + rows[4] * py + rows[5] * pz;
    double bx = rows[0] * ray.dx + rows[1] * ray.dy + rows[2] * ray.dz;
    double by = rows[3] * ray.dx + rows[4] * ray.dy + rows[5] * ray.dz;
    double a = bx * bx + by * by;
    double b = ax * bx + ay * by;
    double c = ax * ax + ay * ay - 1;
    if (round) {
      double az = rows[6] * px + rows[7] * py + rows[8] * pz;
      double bz = rows[6] * ray.dx + rows[7] * ray.dy + rows[8] * ray.dz;
      a += bz * bz;
      b += az * bz;
      c += az * az;
    }
    if (a < 1e-12) {
      return c < 0;
    }
    double root = b * b - a * c;
    if (root <= 0) {
      return false;
    }
    double half = Math.sqrt(root);
    double enter = (-b - half) / a;
    double leave = (-b + half) / a;
    if (enter > hit.enter) {
      hit.enter = enter;
      hit.enterFace = face;
    }
    hit.leave = Math.min(hit.leave, leave);
    return hit.enter < hit.leave;
  }

  void normal(double x, double y, double z, Hit hit) {
    double px = x - cx;
    double py = y - cy;
    double pz = z - cz;
    double ax = rows[0] * px + rows[1] * py + rows[2] * pz;
    double ay = rows[3] * px + rows[4] * py + rows[5] * pz;
    double az = round ? rows[6] * px + rows[7] * py + rows[8] * pz : 0;
    double nx = ax * rows[0] + ay * rows[3] + az * rows[6];
    double ny = ax * rows[1] + ay * rows[4] + az * rows[7];
    double nz = ax * rows[2] + ay * rows[5] + az * rows[8];
    double inverse = 1 / Math.sqrt(nx * nx + ny * ny + nz * nz);
    hit.nx = nx * inverse;
    hit.ny = ny * inverse;
    hit.nz = nz * inverse;
  }

  /** How far the body reaches from its middle along x, y, z; endless along w for a cylinder. */
  Vec reach(Frame frame, double a, double b, double c) {
    return new Vec(
        reach(frame.u().x() * a, frame.v().x() * b, frame.w().x() * c),
        reach(frame.u().y() * a, frame.v().y() * b, frame.w().y() * c),
        reach(frame.u().z() * a, frame.v().z() * b, frame.w().z() * c));
  }

  private double reach(double u, double v, double w) {
    return round ? Math.sqrt(u * u + v * v + w * w) : Math.sqrt(u * u + v * v) + Math.abs(w);
  }
}
