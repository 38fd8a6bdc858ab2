package org.relegend.viewer.mode.edit;

import org.relegend.map.Designator;
import org.relegend.map.Part;

/** What the map says of a part, as lines that can be typed. */
public record PartEntry(
    String designator, String kind, String value, String casing, String channel, String note) {
  public static PartEntry of(Part part) {
    return new PartEntry(
        part.designator().text(),
        part.kind(),
        part.value(),
        part.casing(),
        part.channel(),
        part.note());
  }

  /**
   * The part as typed; it stays the same one, whatever it is called.
   *
   * @throws IllegalArgumentException with one sentence where something typed can't be
   */
  public Part on(Part before, String kindName) {
    return before
        .withDesignator(new Designator(designator))
        .withKind(kindName)
        .withValue(value)
        .withCasing(casing)
        .withChannel(channel)
        .withNote(note);
  }
}
