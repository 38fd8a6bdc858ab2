package org.relegend.map;

/** A reference designator as the technician says it: R101, U7, 1A2R3. */
public record Designator(String text) implements Comparable<Designator> {
  public Designator {
    NameRules.checkedToken("designator", text);
  }

  @Override
  public int compareTo(Designator other) {
    return NameRules.NATURAL.compare(text, other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
