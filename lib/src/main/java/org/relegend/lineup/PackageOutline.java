package org.relegend.lineup;

import static java.util.Objects.requireNonNull;

import java.util.List;
import org.relegend.map.Point;
import org.relegend.map.Side;

/**
 * A package placed on a picture by the places of its first and its last pin.
 *
 * @param pins where each pin lies, pin 1 first
 * @param body the body's outline; a flat one, so that tall parts lean out of it in a photo
 * @param scale length of a millimetre at the package, in units of the plane that it was placed in:
 *     1 in a plane of millimetres where package and clicks agree
 */
public record PackageOutline(PackageShape shape, List<Point> pins, List<Point> body, double scale) {
  public PackageOutline {
    requireNonNull(shape);
    pins = List.copyOf(pins);
    body = List.copyOf(body);
  }

  /**
   * On a picture taken square on.
   *
   * @param side that the picture shows: from the component side pins count counter-clockwise, from
   *     the solder side clockwise
   * @throws IllegalArgumentException if both clicks are at the same point
   */
  public static PackageOutline place(PackageShape shape, Point first, Point last, Side side) {
    return place(shape, first, last, side, Transform.IDENTITY);
  }

  /**
   * On a picture in perspective.
   *
   * @param side that the picture shows
   * @param toPlane from the picture to a plane where the board is square on: that of a {@link
   *     Scale}, or another picture that was taken so
   * @throws IllegalArgumentException if both clicks are at the same point, or beyond the horizon
   */
  public static PackageOutline place(
      PackageShape shape, Point first, Point last, Side side, Transform toPlane) {
    if (first.equals(last)) {
      throw new IllegalArgumentException(
          "the first and the last pin can't both be at %s, %s".formatted(first.x(), first.y()));
    }
    if (toPlane.denominator(first) <= 0 || toPlane.denominator(last) <= 0) {
      throw new IllegalArgumentException("the pins lie beyond the horizon of the line-up");
    }
    boolean mirrored = (side == Side.SOLDER) != toPlane.mirrors();
    Point from = toPlane.apply(first);
    Point to = toPlane.apply(last);
    Transform laid = laid(shape, from, to, mirrored);
    Transform onto = toPlane.inverse().after(laid);
    return new PackageOutline(
        shape,
        shape.pins().stream().map(onto::apply).toList(),
        shape.body().stream().map(onto::apply).toList(),
        from.distance(to) / shape.span());
  }

  /** The similarity, mirrored or not, that carries pin 1 and the last pin to two points. */
  private static Transform laid(PackageShape shape, Point first, Point last, boolean mirrored) {
    Point a = shape.pins().get(0);
    Point b = shape.pins().get(shape.pins().size() - 1);
    double flip = mirrored ? -1 : 1;
    double x = b.x() - a.x();
    double y = flip * (b.y() - a.y());
    double squared = x * x + y * y;
    double u = last.x() - first.x();
    double v = last.y() - first.y();
    double c = (x * u + y * v) / squared;
    double s = (x * v - y * u) / squared;
    Transform turned = new Transform(c, -s * flip, 0, s, c * flip, 0, 0, 0, 1);
    return Transform.shift(first.x(), first.y())
        .after(turned)
        .after(Transform.shift(-a.x(), -a.y()));
  }
}
