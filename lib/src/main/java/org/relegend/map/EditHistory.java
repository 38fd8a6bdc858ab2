package org.relegend.map;

/** The history of a board map. */
public final class EditHistory extends History<BoardMap, Edit> {
  /** How many edits can be undone; the oldest are forgotten beyond that. */
  public static final int LIMIT = History.LIMIT;

  public EditHistory(BoardMap first) {
    super(first);
  }
}
