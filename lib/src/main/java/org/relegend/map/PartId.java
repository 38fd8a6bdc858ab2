package org.relegend.map;

/**
 * What a part is known by inside the map for good: made from its first designator, and kept when
 * the designator changes.
 */
public record PartId(String text) implements Comparable<PartId> {
  public PartId {
    NameRules.checkedToken("part id", text);
  }

  @Override
  public int compareTo(PartId other) {
    return NameRules.NATURAL.compare(text, other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
