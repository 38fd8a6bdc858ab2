package org.relegend.demo.page;

/** Which way a symbol points. */
enum Heading {
  RIGHT,
  DOWN,
  LEFT,
  UP;

  /** A place given along and across this heading, from a point; all in the same unit. */
  Dot from(double x, double y, double along, double across) {
    return switch (this) {
      case RIGHT -> new Dot(x + along, y + across);
      case DOWN -> new Dot(x - across, y + along);
      case LEFT -> new Dot(x - along, y - across);
      case UP -> new Dot(x + across, y - along);
    };
  }

  boolean level() {
    return this == RIGHT || this == LEFT;
  }
}
