package org.relegend.scan;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import org.relegend.map.Box;

/**
 * The brightness of a page or of a scanned image as stored, one byte a pixel, row by row, no larger
 * than asked for; each pixel is the mean of what it covers.
 */
public final class GreyPage {
  private final int width;
  private final int height;
  private final byte[] brightness;

  private GreyPage(int width, int height, byte[] brightness) {
    this.width = width;
    this.height = height;
    this.brightness = brightness;
  }

  /**
   * Reads it.
   *
   * @param number of the page, from 1; 1 for an image
   * @param mostPixels about so many at most
   * @throws PictureException where it can't be read
   */
  public static GreyPage of(Path file, int number, int mostPixels) throws PictureException {
    return PictureFormat.of(file) == PictureFormat.PDF
        ? rendered(file, number, mostPixels)
        : read(PhotoFile.probe(file), mostPixels);
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  /** Not a copy. */
  public byte[] brightness() {
    return brightness;
  }

  private static GreyPage rendered(Path file, int number, int mostPixels) throws PictureException {
    try (PdfPages pages = PdfPages.open(file)) {
      PdfPages.Size size = pages.size(number);
      double scale = Math.sqrt(mostPixels / (size.width() * size.height()));
      BufferedImage image =
          pages.render(
              number, new Box(0, 0, size.width(), size.height()), scale, PdfPages.Finish.SMOOTH);
      byte[] brightness = new byte[image.getWidth() * image.getHeight()];
      int[] row = new int[image.getWidth()];
      for (int y = 0; y < image.getHeight(); y++) {
        image.getRGB(0, y, row.length, 1, row, 0, row.length);
        for (int x = 0; x < row.length; x++) {
          brightness[y * row.length + x] =
              (byte) PhotoBrightness.weighed(row[x] >> 16 & 255, row[x] >> 8 & 255, row[x] & 255);
        }
      }
      return new GreyPage(image.getWidth(), image.getHeight(), brightness);
    } catch (IOException problem) {
      throw PhotoFile.damaged(file, problem);
    }
  }

  private static GreyPage read(PhotoFile photo, int mostPixels) throws PictureException {
    double pixels = (double) photo.width() * photo.height();
    int block = Math.max(1, (int) Math.ceil(Math.sqrt(pixels / mostPixels)));
    Blocks blocks = new Blocks(photo.width(), photo.height(), block, PhotoRows.bands(photo));
    PhotoRows.decode(photo, blocks::row, Progress.UNWATCHED);
    return new GreyPage(blocks.across, blocks.down, blocks.means);
  }

  /** Means of square blocks; a rest at the right or lower edge that fills none is left out. */
  private static final class Blocks {
    private final int block;
    private final int bands;
    private final int across;
    private final int down;
    private final byte[] means;
    private final long[] sums;

    Blocks(int width, int height, int block, int bands) {
      this.block = block;
      this.bands = bands;
      across = width / block;
      down = height / block;
      means = new byte[across * down];
      sums = new long[across];
    }

    void row(int y, byte[] samples) {
      if (y / block >= down) {
        return;
      }
      for (int x = 0; x < across * block; x++) {
        int at = x * bands;
        sums[x / block] +=
            bands == 1
                ? samples[at] & 255
                : PhotoBrightness.weighed(
                    samples[at] & 255, samples[at + 1] & 255, samples[at + 2] & 255);
      }
      if (y % block == block - 1) {
        for (int i = 0; i < across; i++) {
          means[y / block * across + i] = (byte) (sums[i] / ((long) block * block));
          sums[i] = 0;
        }
      }
    }
  }
}
