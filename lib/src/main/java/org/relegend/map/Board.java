package org.relegend.map;

/**
 * One circuit board of the unit.
 *
 * @param issue the revision printed on the copper or the bare board; empty while unknown
 * @param widthMm size of the bare board in millimetres; 0 while unknown
 */
public record Board(
    BoardId id, String title, String issue, double widthMm, double heightMm, String note)
    implements Keyed<BoardId> {
  public Board {
    TextRules.line("board title", title);
    TextRules.line("board issue", issue);
    TextRules.note(note);
    if (!(widthMm >= 0 && heightMm >= 0 && widthMm < 10_000 && heightMm < 10_000)) {
      throw new IllegalArgumentException(
          "a board of %s x %s mm can't be".formatted(widthMm, heightMm));
    }
    widthMm += 0.0; // no negative zero
    heightMm += 0.0;
  }

  public static Board named(BoardId id) {
    return new Board(id, "", "", 0, 0, "");
  }

  @Override
  public BoardId key() {
    return id;
  }
}
