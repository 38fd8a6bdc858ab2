package org.relegend.map;

import java.util.Optional;

/** What can be placed on: a page of the schematic or a photo of one side of a board. */
public sealed interface Picture extends Keyed<PictureId> permits Page, Photo {
  PictureId id();

  /** What people call it; may be empty. */
  String title();

  /** Where the file is, relative to the map's folder, with forward slashes. */
  String file();

  /** SHA-256 of the file, as 64 small hexadecimal digits. */
  String sha256();

  /** Width in the units of {@link Point}: pixels of a photo, points of a PDF page. */
  double width();

  double height();

  /** The board a photo shows; a page may show all of them. */
  Optional<BoardId> shownBoard();

  /** The same picture under another id. */
  Picture withId(PictureId changed);

  @Override
  default PictureId key() {
    return id();
  }

  /** Whether a point lies on the picture, its edges included. */
  default boolean contains(Point point) {
    return point.x() >= 0 && point.y() >= 0 && point.x() <= width() && point.y() <= height();
  }

  /** The title, or the id where there is none. */
  default String caption() {
    return title().isEmpty() ? id().text() : title();
  }

  /** Checks what both kinds have in common. */
  static void check(String title, String file, String sha256, double width, double height) {
    TextRules.line("picture title", title);
    NameRules.checked("file name", file);
    if (file.startsWith("/") || file.contains("\\") || file.contains(":")) {
      throw new IllegalArgumentException(
          "the file name \"%s\" must be relative to the map's folder".formatted(file));
    }
    for (String step : file.split("/", -1)) {
      if (step.isEmpty() || step.equals(".") || step.equals("..")) {
        throw new IllegalArgumentException(
            "the file name \"%s\" must stay inside the map's folder".formatted(file));
      }
    }
    if (!sha256.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException(
          "\"%s\" is no SHA-256 digest of 64 hexadecimal digits"
              .formatted(NameRules.printable(sha256)));
    }
    if (!(width > 0 && height > 0 && width <= 1_000_000 && height <= 1_000_000)) {
      throw new IllegalArgumentException("a picture of %s x %s can't be".formatted(width, height));
    }
  }
}
