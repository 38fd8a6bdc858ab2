package org.relegend.map;

/** One circuit board of the unit. */
public record BoardId(String text) implements Comparable<BoardId> {
  public BoardId {
    NameRules.checkedToken("board name", text);
  }

  @Override
  public int compareTo(BoardId other) {
    return NameRules.NATURAL.compare(text, other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
