package org.relegend.lineup;

/**
 * How a transform stretches and turns the neighbourhood of one point: the partial derivatives of
 * the carried point, {@code xx} being that of x' by x, {@code xy} that of x' by y.
 */
public record Jacobian(double xx, double xy, double yx, double yy) {

  /** Area ratio; negative where the neighbourhood is mirrored. */
  public double determinant() {
    return xx * yy - xy * yx;
  }

  /** Length ratio, averaged over all directions: the square root of the area ratio. */
  public double scale() {
    return Math.sqrt(Math.abs(determinant()));
  }

  /**
   * Longest over shortest length ratio of any two directions: 1 for a similarity, 2 for a surface
   * seen at 60 degrees from square on (1 / cos 60 degrees).
   */
  public double slant() {
    double squares = xx * xx + xy * xy + yx * yx + yy * yy;
    double area = Math.abs(determinant());
    double longest =
        Math.sqrt((squares + Math.sqrt(Math.max(0, squares * squares - 4 * area * area))) / 2);
    return longest * longest / area;
  }
}
