package org.relegend.viewer.session;

import org.relegend.map.PictureId;
import org.relegend.map.Point;

/**
 * The technician pointed at a place of a picture.
 *
 * @param reach how far off a mark the pointer may be and still mean it, in picture units
 * @param more whether it is meant to add to what is chosen already
 */
public record Click(PictureId picture, Point at, double reach, boolean more) {
  public Click {
    if (!(reach >= 0 && Double.isFinite(reach))) {
      throw new IllegalArgumentException("a reach of " + reach);
    }
  }
}
