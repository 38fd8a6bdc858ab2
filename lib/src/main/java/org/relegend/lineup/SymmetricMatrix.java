package org.relegend.lineup;

/** A symmetric 2x2 matrix: the covariance of a point, or a weight for its two coordinates. */
record SymmetricMatrix(double xx, double xy, double yy) {
  static final SymmetricMatrix ZERO = new SymmetricMatrix(0, 0, 0);
  static final SymmetricMatrix ONE = new SymmetricMatrix(1, 0, 1);

  SymmetricMatrix plus(SymmetricMatrix other) {
    return new SymmetricMatrix(xx + other.xx, xy + other.xy, yy + other.yy);
  }

  SymmetricMatrix minus(SymmetricMatrix other) {
    return new SymmetricMatrix(xx - other.xx, xy - other.xy, yy - other.yy);
  }

  SymmetricMatrix times(double factor) {
    return new SymmetricMatrix(factor * xx, factor * xy, factor * yy);
  }

  double determinant() {
    return xx * yy - xy * xy;
  }

  double trace() {
    return xx + yy;
  }

  SymmetricMatrix inverse() {
    double d = determinant();
    return new SymmetricMatrix(yy / d, -xy / d, xx / d);
  }

  /** The quadratic form (x, y) M (x, y). */
  double of(double x, double y) {
    return xx * x * x + 2 * xy * x * y + yy * y * y;
  }

  /** J M J', the covariance of a point after a map whose derivatives are J. */
  SymmetricMatrix through(Jacobian j) {
    double ax = j.xx() * xx + j.xy() * xy;
    double ay = j.xx() * xy + j.xy() * yy;
    double bx = j.yx() * xx + j.yy() * xy;
    double by = j.yx() * xy + j.yy() * yy;
    return new SymmetricMatrix(
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
