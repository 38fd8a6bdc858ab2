package org.relegend.lineup;

/** A symmetric 2x2 matrix: the covariance of a point, or a weight for its two coordinates. */
record Sym2(double xx, double xy, double yy) {
  static final Sym2 ZERO = new Sym2(0, 0, 0);
  static final Sym2 ONE = new Sym2(1, 0, 1);

  Sym2 plus(Sym2 other) {
    return new Sym2(xx + other.xx, xy + other.xy, yy + other.yy);
  }

  Sym2 minus(Sym2 other) {
    return new Sym2(xx - other.xx, xy - other.xy, yy - other.yy);
  }

  Sym2 times(double factor) {
    return new Sym2(factor * xx, factor * xy, factor * yy);
  }

  double determinant() {
    return xx * yy - xy * xy;
  }

  double trace() {
    return xx + yy;
  }

  Sym2 inverse() {
    double d = determinant();
    return new Sym2(yy / d, -xy / d, xx / d);
  }

  /** The quadratic form (x, y) M (x, y). */
  double of(double x, double y) {
    return xx * x * x + 2 * xy * x * y + yy * y * y;
  }

  /** J M J', the covariance of a point after a map whose derivatives are J. */
  Sym2 through(Jacobian j) {
    double ax = j.xx() * xx + j.xy() * xy;
    double ay = j.xx() * xy + j.xy() * yy;
    double bx = j.yx() * xx + j.yy() * xy;
    double by = j.yx() * xy + j.yy() * yy;
    return new Sym2(
        ax * j.xx() + ay * j.xy(), ax * j.yx() + ay * j.yy(), bx * j.yx() + by * j.yy());
  }

  double largestEigenvalue() {
    return trace() / 2 + spread();
  }

  /** Clamped at zero: rounding may leave a covariance of rank one slightly negative. */
  double smallestEigenvalue() {
    return Math.max(0, trace() / 2 - spread());
  }

  private double spread() {
    return Math.hypot((xx - yy) / 2, xy);
  }
}
