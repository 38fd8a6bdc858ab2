package org.relegend.hazard;

import java.util.List;
import org.relegend.map.HazardZone;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.map.Subject;

/**
 * Something dangerous that is placed on a picture and lies in no zone of a fitting kind there.
 *
 * @param subject a pin, or a part or section whose body is placed
 * @param outline the body's; empty for pins
 * @param kind the kind of zone it should lie in
 */
public record Unmarked(
    PictureId picture, Subject subject, Point at, List<Point> outline, HazardZone.Kind kind) {
  public Unmarked {
    outline = List.copyOf(outline);
  }
}
