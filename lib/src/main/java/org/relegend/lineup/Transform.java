package org.relegend.lineup;

import org.relegend.map.Point;

/**
 * A plane projective transform: the 3x3 matrix, row by row, that carries points of one picture to
 * another in homogeneous coordinates. It is kept scaled by a positive number to |m22| = 1 where m22
 * isn't nearly zero, so that two transforms that do the same are equal up to rounding.
 *
 * <p>Frame: on the part of the first picture that is in use the denominator {@code m20 x + m21 y +
 * m22} is positive. Fits keep to it, and {@link #inverse} and {@link #after} preserve it.
 */
public record Transform(
    double m00,
    double m01,
    double m02,
    double m10,
    double m11,
    double m12,
    double m20,
    double m21,
    double m22) {

  public static final Transform IDENTITY = new Transform(1, 0, 0, 0, 1, 0, 0, 0, 1);

  /** Below this share of the matrix's largest last-row entry, m22 is too small to scale by. */
  private static final double TINY = 1e-12;

  public Transform {
    double size =
        Math.abs(m22) > TINY * Math.max(Math.abs(m20), Math.abs(m21))
            ? Math.abs(m22)
            : Math.hypot(m20, m21);
    m00 /= size;
    m01 /= size;
    m02 /= size;
    m10 /= size;
    m11 /= size;
    m12 /= size;
    m20 /= size;
    m21 /= size;
    m22 /= size;
    double determinant = determinant(m00, m01, m02, m10, m11, m12, m20, m21, m22);
    if (!Double.isFinite(determinant) || determinant == 0) {
      throw new IllegalArgumentException(
          "a transform needs nine finite numbers and a matrix that can be inverted");
    }
  }

  /**
   * From nine numbers, row by row.
   *
   * @throws IllegalArgumentException unless they are nine finite numbers of an invertible matrix
   */
  public static Transform of(double... rows) {
    if (rows.length != 9) {
      throw new IllegalArgumentException("a transform has nine numbers, not " + rows.length);
    }
    return new Transform(
        rows[0], rows[1], rows[2], rows[3], rows[4], rows[5], rows[6], rows[7], rows[8]);
  }

  public static Transform shift(double dx, double dy) {
    return new Transform(1, 0, dx, 0, 1, dy, 0, 0, 1);
  }

  public static Transform scale(double factor) {
    return new Transform(factor, 0, 0, 0, factor, 0, 0, 0, 1);
  }

  /** The nine numbers, row by row; a fresh array. */
  public double[] matrix() {
    return new double[] {m00, m01, m02, m10, m11, m12, m20, m21, m22};
  }

  /**
   * The carried point.
   *
   * @throws IllegalArgumentException for a point on the transform's horizon, which has none
   */
  public Point apply(Point p) {
    double w = denominator(p);
    double x = (m00 * p.x() + m01 * p.y() + m02) / w;
    double y = (m10 * p.x() + m11 * p.y() + m12) / w;
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("the transform carries " + p + " to infinity");
    }
    return new Point(x, y);
  }

  /** Positive on the used side of the horizon, zero on it. */
  public double denominator(Point p) {
    return m20 * p.x() + m21 * p.y() + m22;
  }

  public Transform inverse() {
    return new Transform(
            m11 * m22 - m12 * m21,
            m02 * m21 - m01 * m22,
            m01 * m12 - m02 * m11,
            m12 * m20 - m10 * m22,
            m00 * m22 - m02 * m20,
            m02 * m10 - m00 * m12,
            m10 * m21 - m11 * m20,
            m01 * m20 - m00 * m21,
            m00 * m11 - m01 * m10)
        .times(Math.signum(determinant()));
  }

  /** First the other transform, then this one. */
  public Transform after(Transform first) {
    return new Transform(
        m00 * first.m00 + m01 * first.m10 + m02 * first.m20,
        m00 * first.m01 + m01 * first.m11 + m02 * first.m21,
        m00 * first.m02 + m01 * first.m12 + m02 * first.m22,
        m10 * first.m00 + m11 * first.m10 + m12 * first.m20,
        m10 * first.m01 + m11 * first.m11 + m12 * first.m21,
        m10 * first.m02 + m11 * first.m12 + m12 * first.m22,
        m20 * first.m00 + m21 * first.m10 + m22 * first.m20,
        m20 * first.m01 + m21 * first.m11 + m22 * first.m21,
        m20 * first.m02 + m21 * first.m12 + m22 * first.m22);
  }

  /** The derivatives at a point that is not on the horizon. */
  public Jacobian jacobian(Point p) {
    double w = denominator(p);
    double x = (m00 * p.x() + m01 * p.y() + m02) / w;
    double y = (m10 * p.x() + m11 * p.y() + m12) / w;
    return new Jacobian(
        (m00 - x * m20) / w, (m01 - x * m21) / w, (m10 - y * m20) / w, (m11 - y * m21) / w);
  }

  /** Length ratio at a point, averaged over all directions. */
  public double scaleAt(Point p) {
    return jacobian(p).scale();
  }

  /** Whether left and right are exchanged, on the side of the horizon that is in use. */
  public boolean mirrors() {
    return determinant() < 0;
  }

  public double determinant() {
    return determinant(m00, m01, m02, m10, m11, m12, m20, m21, m22);
  }

  private Transform times(double factor) {
    double[] m = matrix();
    for (int i = 0; i < m.length; i++) {
      m[i] *= factor;
    }
    return of(m);
  }

  private static double determinant(
      double m00,
      double m01,
      double m02,
      double m10,
      double m11,
      double m12,
      double m20,
      double m21,
      double m22) {
    return m00 * (m11 * m22 - m12 * m21)
        - m01 * (m10 * m22 - m12 * m20)
        + m02 * (m10 * m21 - m11 * m20);
  }
}
