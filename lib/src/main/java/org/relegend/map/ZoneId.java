package org.relegend.map;

/** One hazard zone of the map. */
public record ZoneId(String text) implements Comparable<ZoneId> {
  public ZoneId {
    NameRules.checkedToken("zone name", text);
  }

  @Override
  public int compareTo(ZoneId other) {
    return NameRules.NATURAL.compare(text, other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
