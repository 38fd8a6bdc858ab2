package org.relegend.scan;

import org.relegend.map.Box;

/**
 * One word of a page's own text.
 *
 * @param box in points as displayed, y downwards
 * @param direction in degrees anticlockwise: 0 for upright text, 90 for text that runs upwards
 * @param size of the letters, in points
 */
public record PageWord(String text, Box box, int direction, double size) {
  /** Whether the other word begins where this one ends, on the same line, with hardly a gap. */
  boolean runsInto(PageWord next) {
    if (next.direction != direction) {
      return false;
    }
    double gap = next.start() - end();
    return gap > -0.2 * size && gap < 0.2 * size && Math.abs(next.line() - line()) < 0.25 * size;
  }

  PageWord joined(PageWord next) {
    Box both =
        new Box(
            Math.min(box.left(), next.box.left()),
            Math.min(box.top(), next.box.top()),
            Math.max(box.right(), next.box.right()),
            Math.max(box.bottom(), next.box.bottom()));
    return new PageWord(text + next.text, both, direction, Math.max(size, next.size));
  }

  /** Where it begins along its own line; grows in reading direction. */
  private double start() {
    return switch (direction) {
      case 90 -> -box.bottom();
      case 180 -> -box.right();
      case 270 -> box.top();
      default -> box.left();
    };
  }

  private double end() {
    return switch (direction) {
      case 90 -> -box.top();
      case 180 -> -box.left();
      case 270 -> box.bottom();
      default -> box.right();
    };
  }

  /** The base line, across the reading direction. */
  private double line() {
    return switch (direction) {
      case 90 -> box.right();
      case 180 -> box.top();
      case 270 -> box.left();
      default -> box.bottom();
    };
  }
}
