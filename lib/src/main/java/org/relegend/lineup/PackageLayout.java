package org.relegend.lineup;

import java.util.ArrayList;
import java.util.List;
import org.relegend.map.Point;

/**
 * How a kind of package sets out its pins and body, in the frame of {@link PackageShape}. Sizes are
 * in millimetres; {@code along} runs with the row of pins, {@code across} square to it.
 */
enum PackageLayout {
  /**
   * Two rows, counted down the left one and up the right one: counter-clockwise from above, the
   * notch at the upper end.
   */
  DUAL {
    @Override
    List<Point> pins(int count, double pitch, double row) {
      List<Point> pins = new ArrayList<>();
      for (int i = 1; i <= count; i++) {
        pins.add(
            i <= count / 2 ? new Point(0, (i - 1) * pitch) : new Point(row, (count - i) * pitch));
      }
      return pins;
    }

    @Override
    List<Point> body(Point centre, double along, double across) {
      double notch = Math.min(1, across / 4);
      double left = centre.x() - across / 2;
      double top = centre.y() - along / 2;
      List<Point> body = new ArrayList<>(rectangle(centre, along, across));
      body.add(1, new Point(left + across / 2 - notch, top));
      body.add(2, new Point(left + across / 2, top + notch));
      body.add(3, new Point(left + across / 2 + notch, top));
      return body;
    }
  },
  /** One row, in the middle of the body. */
  SINGLE,
  /** One row; a round body cut flat towards the one who reads the pins left to right. */
  FLAT_LEFT {
    @Override
    List<Point> body(Point centre, double along, double across) {
      List<Point> body = new ArrayList<>();
      double radius = along / 2;
      double flat = across - radius;
      for (Point p : polygon(centre.plus(flat - across / 2, 0), radius)) {
        body.add(new Point(Math.max(p.x(), centre.x() - across / 2), p.y()));
      }
      return body;
    }
  },
  /** One row, the body behind it for the one who reads the pins left to right. */
  TAB_RIGHT {
    @Override
    List<Point> body(Point centre, double along, double across) {
      return rectangle(centre.plus(across / 4, 0), along, across);
    }
  },
  /** Two leads, the body lying between them. */
  AXIAL,
  /** Two leads under a round body. */
  ROUND {
    @Override
    List<Point> body(Point centre, double along, double across) {
      return polygon(centre, along / 2);
    }
  };

  private static final int CORNERS = 24;

  List<Point> pins(int count, double pitch, double row) {
    List<Point> pins = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      pins.add(new Point(0, i * pitch));
    }
    return pins;
  }

  List<Point> body(Point centre, double along, double across) {
    return rectangle(centre, along, across);
  }

  /** From the upper left corner, clockwise. */
  private static List<Point> rectangle(Point centre, double along, double across) {
    return new Extent(
            centre.x() - across / 2,
            centre.y() - along / 2,
            centre.x() + across / 2,
            centre.y() + along / 2)
        .corners();
  }

  private static List<Point> polygon(Point centre, double radius) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < CORNERS; i++) {
      double angle = 2 * Math.PI * i / CORNERS;
      corners.add(centre.plus(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    return corners;
  }
}
