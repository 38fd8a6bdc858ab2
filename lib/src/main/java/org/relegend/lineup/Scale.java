package org.relegend.lineup;

import static java.util.Objects.requireNonNull;

import org.relegend.map.Point;

/**
 * What measures a picture in millimetres: a transform from picture units to a flat plane in
 * millimetres. From two points it is one factor, right for a picture taken square on; from a fit of
 * four or more known places it follows perspective.
 */
public record Scale(Transform toMillimetres) {
  public Scale {
    requireNonNull(toMillimetres);
  }

  /**
   * From two points and the distance between them.
   *
   * @throws IllegalArgumentException if the points are the same or the distance isn't above zero
   */
  public static Scale between(Point a, Point b, double millimetres) {
    double pixels = a.distance(b);
    if (pixels == 0) {
      throw new IllegalArgumentException(
          "a scale needs two different points; both are at " + a.x() + ", " + a.y());
    }
    if (!(millimetres > 0) || Double.isInfinite(millimetres)) {
      throw new IllegalArgumentException(
          "a scale needs a distance above zero millimetres, not " + millimetres);
    }
    return new Scale(Transform.scale(millimetres / pixels));
  }

  /**
   * From the places of two pins of a package, for instance pins 1 and 7 of a 14-pin dual in-line
   * one (15.24 mm).
   *
   * @throws IllegalArgumentException if the places are the same, or the package has no such pins
   */
  public static Scale between(PackageShape shape, int pin, Point at, int otherPin, Point otherAt) {
    return between(at, otherAt, shape.pin(pin).distance(shape.pin(otherPin)));
  }

  /** Millimetres between two points of the picture. */
  public double distance(Point a, Point b) {
    return toMillimetres.apply(a).distance(toMillimetres.apply(b));
  }

  /** Millimetres per picture unit at a point, averaged over all directions. */
  public double at(Point p) {
    return toMillimetres.scaleAt(p);
  }
}
