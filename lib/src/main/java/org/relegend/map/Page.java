package org.relegend.map;

import java.util.Optional;

/**
 * A page of the schematic.
 *
 * @param number which page of the file, from 1; 1 for a scan that is an image
 */
public record Page(
    PictureId id, String title, String file, int number, String sha256, double width, double height)
    implements Picture {
  public Page {
    Picture.check(title, file, sha256, width, height);
    if (number < 1) {
      throw new IllegalArgumentException("pages count from 1, so there is no page " + number);
    }
  }

  @Override
  public Optional<BoardId> shownBoard() {
    return Optional.empty();
  }

  @Override
  public Page withId(PictureId changed) {
    return new Page(changed, title, file, number, sha256, width, height);
  }
}
