package org.relegend.viewer.control;

import org.relegend.map.BoardMap;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.viewer.session.NodeCard;

/** Names of things as the window shows them. */
public final class DisplayNames {
  private DisplayNames() {}

  /** What a twin follows from. */
  public static String follows(BoardMap map, NodeCard.Follows follows) {
    return Messages.of(
        "card.follows",
        map.nameOf(follows.from().a()),
        map.nameOf(follows.from().b()),
        follows.others());
  }

  /**
   * A picture's title; of a photo also which side of which board it shows, and whether it is one of
   * this very unit, as those that aren't in the map are.
   */
  public static String caption(BoardMap map, Picture picture) {
    String caption = plain(map, picture);
    return map.pictures().has(picture.id()) ? caption : Messages.of("photo.unit", caption);
  }

  private static String plain(BoardMap map, Picture picture) {
    if (!(picture instanceof Photo photo)) {
      return picture.caption();
    }
    String side = Messages.of("photo.side." + Messages.word(photo.side()));
    boolean named = photo.caption().equalsIgnoreCase(side);
    if (map.boards().size() > 1) {
      return Messages.of("photo.caption", photo.caption(), side, photo.board());
    }
    return named ? photo.caption() : photo.caption() + " \u00b7 " + side;
  }
}
