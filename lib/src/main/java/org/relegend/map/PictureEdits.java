package org.relegend.map;

import static org.relegend.map.References.keep;

/** Edits of boards, pictures, the zones on them and what lines them up. */
public final class PictureEdits {
  private PictureEdits() {}

  /** Adds a board or changes what is known of it. */
  public record PutBoard(Board board) implements Edit {
    @Override
    public String label(BoardMap map) {
      return (map.boards().has(board.id()) ? "Change board " : "Add board ") + board.id();
    }

    @Override
    public BoardMap applyTo(BoardMap map) {
      return map.withBoards(map.boards().with(board));
    }
  }

  /** Removes a board that nothing is on any more. */
  public record RemoveBoard(BoardId board) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Remove board " + board;
    }

    @Override
    public BoardMap applyTo(BoardMap map) throws EditRefusedException {
      long parts = map.parts().stream().filter(part -> part.board().equals(board)).count();
      long photos =
          map.pictures().stream()
              .filter(picture -> picture.shownBoard().filter(board::equals).isPresent())
              .count();
      if (parts + photos > 0) {
        throw new EditRefusedException(
            "Board %s still has %d parts and %d photos: move or remove those first."
                .formatted(board, parts, photos));
      }
      return map.withBoards(map.boards().without(board));
    }
  }

  /** Adds a picture or changes what is known of it; its file is the store's business. */
  public record PutPicture(Picture picture) implements Edit {
    @Override
    public String label(BoardMap map) {
      return (map.pictures().has(picture.id()) ? "Change " : "Add ") + picture.caption();
    }

    @Override
    public BoardMap applyTo(BoardMap map) throws EditRefusedException {
      if (picture instanceof Photo photo && !map.boards().has(photo.board())) {
        throw new EditRefusedException(
            "Photo %s shows board %s, which the map doesn't have: add the board first."
                .formatted(picture.id(), photo.board()));
      }
      return map.withPictures(map.pictures().with(picture));
    }
  }

  /** Removes a picture with all that was placed on it, and its line-ups. */
  public record RemovePicture(PictureId picture) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Remove " + caption(map, picture);
    }

    @Override
    public BoardMap applyTo(BoardMap map) {
      return map.withPictures(map.pictures().without(picture))
          .withPlacements(keep(map.placements(), p -> !p.picture().equals(picture)))
          .withZones(keep(map.zones(), zone -> !zone.picture().equals(picture)))
          .withLineUps(
              keep(
                  map.lineUps(),
                  pairs -> !pairs.a().equals(picture) && !pairs.b().equals(picture)));
    }
  }

  /** Draws a hazard zone or changes it. */
  public record PutZone(HazardZone zone) implements Edit {
    @Override
    public String label(BoardMap map) {
      return (map.zones().has(zone.id()) ? "Change " : "Draw ") + map.nameOf(zone);
    }

    @Override
    public BoardMap applyTo(BoardMap map) throws EditRefusedException {
      if (!map.pictures().has(zone.picture())) {
        throw new EditRefusedException(
            "Zone %s lies on picture %s, which the map doesn't have."
                .formatted(zone.id(), zone.picture()));
      }
      return map.withZones(map.zones().with(zone));
    }
  }

  /** Removes a hazard zone. */
  public record RemoveZone(ZoneId zone) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Remove " + map.zones().find(zone).map(map::nameOf).orElse("zone " + zone);
    }

    @Override
    public BoardMap applyTo(BoardMap map) {
      return map.withZones(map.zones().without(zone));
    }
  }

  /** Lines two pictures up by these pairs, or by these in the place of others. */
  public record PutPairs(PicturePairs pairs) implements Edit {
    @Override
    public String label(BoardMap map) {
      String verb = map.lineUps().has(pairs.key()) ? "Change line-up of " : "Line up ";
      return verb + captions(map, pairs.key());
    }

    @Override
    public BoardMap applyTo(BoardMap map) throws EditRefusedException {
      Picture a = known(map, pairs.a());
      Picture b = known(map, pairs.b());
      if (!a.shownBoard().equals(b.shownBoard())) {
        throw new EditRefusedException(
            "%s and %s don't show the same board, so nothing can be carried between them."
                .formatted(a.caption(), b.caption()));
      }
      return map.withLineUps(map.lineUps().with(pairs));
    }

    private static Picture known(BoardMap map, PictureId picture) throws EditRefusedException {
      return map.picture(picture)
          .orElseThrow(
              () ->
                  new EditRefusedException(
                      "The map has no picture " + picture + ": add it first."));
    }
  }

  /** Takes a line-up away, and with it all that was carried over it. */
  public record RemovePairs(PicturePairs.Key pairs) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Take away line-up of " + captions(map, pairs);
    }

    @Override
    public BoardMap applyTo(BoardMap map) {
      return map.withLineUps(map.lineUps().without(pairs));
    }
  }

  private static String captions(BoardMap map, PicturePairs.Key pairs) {
    return caption(map, pairs.a()) + " and " + caption(map, pairs.b());
  }

  private static String caption(BoardMap map, PictureId picture) {
    return map.picture(picture).map(Picture::caption).orElse(picture.text());
  }
}
