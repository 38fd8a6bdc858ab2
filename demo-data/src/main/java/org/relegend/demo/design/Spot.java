package org.relegend.demo.design;

/** A point of the board in millimetres, seen from the component side: x to the right, y down. */
public record Spot(double x, double y) {
  public double distance(Spot other) {
    double dx = x - other.x;
    double dy = y - other.y;
    return Math.sqrt(dx * dx + dy * dy);
  }
}
