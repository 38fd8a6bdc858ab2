package org.relegend.lineup;

import static java.util.Objects.requireNonNull;

import java.util.List;
import org.relegend.map.Point;

/**
 * A package as it lies on the board: millimetres, seen from the component side, pin 1 at the
 * origin, y downwards. Pins count from 1.
 *
 * @param pins their places, pin 1 first
 * @param body the body's outline as a polygon; what it covers is drawn, not measured by
 * @param source where the figures are from
 */
public record PackageShape(String name, List<Point> pins, List<Point> body, String source) {
  public PackageShape {
    requireNonNull(name);
    requireNonNull(source);
    pins = List.copyOf(pins);
    body = List.copyOf(body);
    if (pins.size() < 2) {
      throw new IllegalArgumentException("package " + name + " needs at least two pins");
    }
    if (pins.get(0).equals(pins.get(pins.size() - 1))) {
      throw new IllegalArgumentException(
          "the first and the last pin of package " + name + " are at the same place");
    }
  }

  /**
   * The place of a pin, counted from 1.
   *
   * @throws IllegalArgumentException where the package has no such pin
   */
  public Point pin(int number) {
    if (number < 1 || number > pins.size()) {
      throw new IllegalArgumentException(
          "package %s has pins 1 to %d, not %d".formatted(name, pins.size(), number));
    }
    return pins.get(number - 1);
  }

  /** Millimetres between pin 1 and the last pin. */
  public double span() {
    return pins.get(0).distance(pins.get(pins.size() - 1));
  }
}
