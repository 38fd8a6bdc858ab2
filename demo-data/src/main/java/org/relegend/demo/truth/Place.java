package org.relegend.demo.truth;

import java.util.List;
import org.relegend.demo.design.Spot;

/**
 * Where something is on one picture: pixels of a photo, points of a page; y down, whole numbers at
 * pixel corners.
 *
 * @param kind body, section, pad (the middle of a pin's pad on a photo), pin (its end on a page),
 *     name (a part's lettering), label (a net's), hole, corner (of the bare board)
 * @param subject as a map writes it: {@code R101}, {@code U101/Ta}, {@code R101.1}, {@code net:VP}
 * @param outline round a body or section; else empty
 */
public record Place(String picture, Kind kind, String subject, Spot at, List<Spot> outline) {
  /** What of the subject lies there. */
  public enum Kind {
    BODY,
    SECTION,
    PAD,
    PIN,
    NAME,
    LABEL,
    HOLE,
    CORNER
  }

  public Place {
    outline = List.copyOf(outline);
  }
}
