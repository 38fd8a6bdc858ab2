package org.relegend.hazard;

import java.util.List;
import org.relegend.map.HazardZone;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.map.Subject;

/**
 * Something dangerous that is placed on a picture and doesn't lie in zones of a fitting kind there.
 *
 * @param subject a pin, or a part or section whose body is placed
 * @param outline the body's; empty for pins
 * @param kind the kind of zone it should lie in
 * @param outside how much of it lies outside of such zones: 1 for all, and for pins
 */
public record UnmarkedHazard(
    PictureId picture,
    Subject subject,
    Point at,
    List<Point> outline,
    HazardZone.Kind kind,
    double outside) {
  public UnmarkedHazard {
    outline = List.copyOf(outline);
  }

  /** Whether a zone holds some of it already, but not all. */
  public boolean inPart() {
    return outside < 1;
  }

  /** How much of it lies outside, in words: "65 % of T1" of T1; the name alone where all does. */
  public String text(String name) {
    return inPart() ? "%d %% of %s".formatted(Math.max(1, Math.round(100 * outside)), name) : name;
  }
}
