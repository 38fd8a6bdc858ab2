package org.relegend.demo.ray;

/** A line of sight or light; one object a thread, set anew for each use. */
public final class Ray {
  double ox;
  double oy;
  double oz;
  double dx;
  double dy;
  double dz;

  public Ray set(double fromX, double fromY, double fromZ, double byX, double byY, double byZ) {
    ox = fromX;
    oy = fromY;
    oz = fromZ;
    dx = byX;
    dy = byY;
    dz = byZ;
    return this;
  }

  /** Where the line is after some of its length. */
  public double atX(double t) {
    return ox + dx * t;
  }

  public double atY(double t) {
    return oy + dy * t;
  }
}
