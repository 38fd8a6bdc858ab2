package org.relegend.scan;

import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.relegend.lineup.GreyImage;
import org.relegend.lineup.PhotoLineUp;
import org.relegend.lineup.PhotoResult;
import org.relegend.map.Page;
import org.relegend.map.Picture;

/**
 * A picture as it is matched with another: the brightness of a photo, of a scan, or of a page that
 * was rendered for it.
 *
 * @param unit picture units to a pixel of the image: 1 but for rendered pages
 */
public record MatchImage(GreyImage image, double unit) {
  /** Pixels of a rendered page: fine lines stay apart. */
  private static final int PAGE_PIXELS = 4_000_000;

  /**
   * Reads a picture of the map.
   *
   * @throws PictureException where it can't be read
   * @throws CancellationException where the progress says so
   */
  public static MatchImage of(Path file, Picture picture, Progress progress)
      throws PictureException {
    if (picture instanceof Page page && PictureFormat.of(file) == PictureFormat.PDF) {
      GreyPage seen = GreyPage.of(file, page.number(), PAGE_PIXELS);
      return new MatchImage(
          GreyImage.of(seen.width(), seen.height(), seen.brightness()),
          page.width() / seen.width());
    }
    return of(file, progress);
  }

  /**
   * Reads a photo, or a scan that is an image.
   *
   * @throws PictureException where it can't be read
   * @throws CancellationException where the progress says so
   */
  public static MatchImage of(Path file, Progress progress) throws PictureException {
    PhotoBrightness seen = PhotoBrightness.read(PhotoFile.probe(file), progress);
    return new MatchImage(GreyImage.of(seen.width(), seen.height(), seen.pixels()), 1);
  }

  /**
   * Lines this picture up with another without clicks; the result is in picture units.
   *
   * @param cancelled asked now and then whether to give up
   * @throws CancellationException once it says so
   */
  public PhotoResult lineUp(MatchImage other, BooleanSupplier cancelled) {
    PhotoResult result = PhotoLineUp.of(image, other.image, cancelled);
    return unit == 1 && other.unit == 1 ? result : result.scaled(unit, other.unit);
  }
}
