package org.relegend.share;

import org.relegend.map.BoardMap;
import org.relegend.map.MapTables;
import org.relegend.map.Page;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Table;

/**
 * Sizes of pages that differ by rounding alone are the same: 841.89 points read in single precision
 * is 841.8900146484375.
 */
final class PageSizes {
  /** Less than this much of a point is no difference. */
  private static final double ROUNDING = 0.001;

  private PageSizes() {}

  /** Their map with my sizes of the pages whose sizes are so nearly the same. */
  static BoardMap asIn(BoardMap mine, BoardMap theirs) {
    Table<PictureId, Picture> pictures = theirs.pictures();
    for (Picture own : mine.pictures()) {
      if (own instanceof Page page
          && pictures.find(page.id()).orElse(null) instanceof Page other
          && differByRounding(page, other)) {
        pictures = pictures.with(sized(other, page));
      }
    }
    return pictures.equals(theirs.pictures()) ? theirs : theirs.with(MapTables.PICTURES, pictures);
  }

  private static boolean differByRounding(Page a, Page b) {
    return (a.width() != b.width() || a.height() != b.height())
        && Math.abs(a.width() - b.width()) < ROUNDING
        && Math.abs(a.height() - b.height()) < ROUNDING;
  }

  private static Page sized(Page page, Page as) {
    return new Page(
        page.id(),
        page.title(),
        page.file(),
        page.number(),
        page.sha256(),
        as.width(),
        as.height());
  }
}
