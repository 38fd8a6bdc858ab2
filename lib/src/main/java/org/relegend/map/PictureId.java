package org.relegend.map;

/** One page or photo of the map; also the stem of its file name. */
public record PictureId(String text) implements Comparable<PictureId> {
  public PictureId {
    NameRules.checkedToken("picture name", text);
  }

  @Override
  public int compareTo(PictureId other) {
    return NameRules.NATURAL.compare(text, other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
