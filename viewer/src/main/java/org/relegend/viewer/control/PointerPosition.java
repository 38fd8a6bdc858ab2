package org.relegend.viewer.control;

import java.awt.event.InputEvent;
import org.relegend.map.Point;
import org.relegend.viewer.view.ScreenPoint;

/**
 * Where a person points on a picture.
 *
 * @param at in picture units; may lie outside the picture
 * @param screen the same in pixels of the canvas
 * @param reach how far something may lie from there and still be meant, in picture units
 * @param clicks 1, or 2 for the second click of a double click
 * @param modifiers as {@link InputEvent#getModifiersEx}
 */
public record PointerPosition(
    Point at, ScreenPoint screen, double reach, int clicks, int modifiers) {
  public boolean shift() {
    return (modifiers & InputEvent.SHIFT_DOWN_MASK) != 0;
  }

  public boolean control() {
    return (modifiers & (InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK)) != 0;
  }

  public boolean alt() {
    return (modifiers & InputEvent.ALT_DOWN_MASK) != 0;
  }
}
