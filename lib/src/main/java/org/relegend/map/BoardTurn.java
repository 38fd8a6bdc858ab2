package org.relegend.map;

import java.util.Locale;

/**
 * Over which edge the board was turned between the photo of its component side and this one: the
 * two ways give two different mirrored pictures.
 */
public enum BoardTurn {
  /** Not said, or not turned. */
  UNKNOWN,
  /** Like the page of a book: left and right change places. */
  SIDE_EDGE,
  /** Like the leaf of a wall calendar: top and bottom change places. */
  TOP_EDGE;

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Reads such a word.
   *
   * @throws IllegalArgumentException where it is none of them
   */
  public static BoardTurn of(String word) {
    return FixedWords.find(values(), BoardTurn::word, "turn", word);
  }
}
