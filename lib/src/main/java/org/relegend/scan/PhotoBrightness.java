package org.relegend.scan;

import java.util.concurrent.CancellationException;

/**
 * How bright each pixel of a photo is, as it is seen: turned as the camera noted.
 *
 * @param width in pixels
 * @param height in pixels
 * @param pixels one byte each, row by row; not copied, so not to be changed
 */
@SuppressWarnings("ArrayRecordComponent") // megabytes that are handed on, never compared
public record PhotoBrightness(int width, int height, byte[] pixels) {

  /**
   * Reads it row by row, red, green and blue weighed as ITU-R BT.601 does.
   *
   * @throws PictureException where the photo is damaged, cut off or of an unusual make
   * @throws CancellationException where the progress says so
   */
  public static PhotoBrightness read(PhotoFile photo, Progress progress) throws PictureException {
    ExifOrientation orientation = photo.orientation();
    int width = photo.seenWidth();
    int columnStep = orientation.swaps() ? width : 1;
    int rowStep = orientation.swaps() ? 1 : width;
    boolean columnsReversed = orientation.columnsReversed();
    boolean rowsReversed = orientation.rowsReversed();
    int bands = PhotoRows.bands(photo);
    byte[] pixels = new byte[Math.multiplyExact(width, photo.seenHeight())];
    PhotoRows.decode(
        photo,
        (y, samples) -> {
          int row = rowsReversed ? photo.height() - 1 - y : y;
          int first = row * rowStep + (columnsReversed ? (photo.width() - 1) * columnStep : 0);
          int step = columnsReversed ? -columnStep : columnStep;
          for (int x = 0; x < photo.width(); x++) {
            pixels[first + x * step] = bands == 1 ? samples[x] : weighed(samples, bands * x);
          }
        },
        progress);
    return new PhotoBrightness(width, photo.seenHeight(), pixels);
  }

  private static byte weighed(byte[] samples, int at) {
    return (byte) weighed(samples[at] & 255, samples[at + 1] & 255, samples[at + 2] & 255);
  }

  /** As ITU-R BT.601 weighs red, green and blue, 0 to 255. */
  static int weighed(int red, int green, int blue) {
    return (299 * red + 587 * green + 114 * blue) / 1000;
  }
}
