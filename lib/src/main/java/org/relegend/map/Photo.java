package org.relegend.map;

import java.util.Optional;

/**
 * A photo of one side of a board, upright: the turn a camera noted was applied to the pixels when
 * it was added.
 *
 * @param turn for the solder side, over which edge the board was turned
 */
public record Photo(
    PictureId id,
    String title,
    String file,
    BoardId board,
    Side side,
    BoardTurn turn,
    String sha256,
    double width,
    double height)
    implements Picture {
  public Photo {
    Picture.check(title, file, sha256, width, height);
  }

  @Override
  public Optional<BoardId> shownBoard() {
    return Optional.of(board);
  }

  @Override
  public Photo withId(PictureId changed) {
    return new Photo(changed, title, file, board, side, turn, sha256, width, height);
  }

  public Photo withTitle(String changed) {
    return new Photo(id, changed, file, board, side, turn, sha256, width, height);
  }

  public Photo withTurn(BoardTurn changed) {
    return new Photo(id, title, file, board, side, changed, sha256, width, height);
  }
}
