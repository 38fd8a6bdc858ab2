package org.relegend.sheet;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.relegend.map.Box;
import org.relegend.map.Picture;
import org.relegend.map.Point;

/**
 * What is printed of a picture, and where on the paper.
 *
 * @param shown in the picture's units
 * @param frame on the leaf, of the same shape
 */
record PrintWindow(Box shown, Rectangle2D frame) {
  /** What is shown around the places, as a part of the picture's longer side. */
  private static final double AROUND = 0.05;

  /** The least that is shown, as a part of the picture's longer side. */
  private static final double LEAST = 0.22;

  /**
   * All these places with their surroundings, as large as a frame holds them; the frame shrinks
   * where the picture ends.
   *
   * @param points at least one
   */
  static PrintWindow around(List<Point> points, Picture picture, Rectangle2D room) {
    double side = Math.max(picture.width(), picture.height());
    Box box = Box.around(points).grown(side * AROUND);
    double width = Math.max(box.width(), side * LEAST);
    double height = Math.max(box.height(), side * LEAST * room.getHeight() / room.getWidth());
    double shape = room.getWidth() / room.getHeight();
    width = Math.min(picture.width(), Math.max(width, height * shape));
    height = Math.min(picture.height(), Math.max(height, width / shape));
    double left = within(box.centre().x() - width / 2, picture.width() - width);
    double top = within(box.centre().y() - height / 2, picture.height() - height);
    return fitted(new Box(left, top, left + width, top + height), room);
  }

  static PrintWindow whole(Picture picture, Rectangle2D room) {
    return fitted(new Box(0, 0, picture.width(), picture.height()), room);
  }

  private static double within(double value, double most) {
    return Math.max(0, Math.min(most, value));
  }

  private static PrintWindow fitted(Box shown, Rectangle2D room) {
    double scale = Math.min(room.getWidth() / shown.width(), room.getHeight() / shown.height());
    return new PrintWindow(
        shown,
        new Rectangle2D.Double(
            room.getX(), room.getY(), shown.width() * scale, shown.height() * scale));
  }

  /** Points of the leaf for each unit of the picture. */
  double scale() {
    return frame.getWidth() / shown.width();
  }

  /** From the picture to the leaf. */
  AffineTransform transform() {
    AffineTransform to = AffineTransform.getTranslateInstance(frame.getX(), frame.getY());
    to.scale(scale(), scale());
    to.translate(-shown.left(), -shown.top());
    return to;
  }

  Point onLeaf(Point place) {
    return new Point(
        frame.getX() + (place.x() - shown.left()) * scale(),
        frame.getY() + (place.y() - shown.top()) * scale());
  }
}
