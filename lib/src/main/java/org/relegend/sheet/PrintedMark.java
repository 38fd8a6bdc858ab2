package org.relegend.sheet;

import java.util.List;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;

/**
 * A numbered place on a picture: a ring at a pad, an outline or a square at a body.
 *
 * @param label its number in the table beside the picture, or a reading
 * @param at in the picture's units
 * @param outline of a body; empty for pads and where unknown
 * @param pad whether it is a pin's place; else a body's
 */
record PrintedMark(String label, Point at, List<Point> outline, boolean pad) {
  PrintedMark {
    outline = List.copyOf(outline);
  }

  static PrintedMark of(String label, Placement placement) {
    boolean pad = placement.subject() instanceof Subject.OfPin;
    return new PrintedMark(label, placement.at(), pad ? List.of() : placement.outline(), pad);
  }
}
