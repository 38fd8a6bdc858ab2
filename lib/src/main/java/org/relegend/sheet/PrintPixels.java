package org.relegend.sheet;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.relegend.map.Box;
import org.relegend.map.Page;
import org.relegend.map.Picture;
import org.relegend.scan.PdfPages;
import org.relegend.scan.PhotoFile;
import org.relegend.scan.PhotoRows;
import org.relegend.scan.PictureException;
import org.relegend.scan.PictureFormat;
import org.relegend.scan.Progress;

/**
 * The pixels of pictures, read once, as fine as print needs and memory bears. Pages are printed in
 * grey and without loss, photos as JPEG; neither carries anything of its file but pixels.
 */
final class PrintPixels {
  /** What pixels of one picture may number while they are kept; those beyond are left out. */
  private static final double MOST = 12e6;

  /** Pixels a point of a rendered page, 216 to the inch. */
  private static final double PAGE_SCALE = 3;

  /** Pixels a point of the printed sheet, 200 to the inch. */
  private static final double PRINTED = 200 / 72.0;

  private static final float JPEG_QUALITY = 0.85f;

  /** How many pictures are kept at once. */
  private static final int KEPT = 4;

  /** A picture that was read, with its pixels for each unit of the picture. */
  private record Read(BufferedImage image, double perUnit) {}

  private final LinkedHashMap<Picture, Read> kept = new LinkedHashMap<>(8, 0.75f, true);

  /**
   * A part of a picture, ready to be printed.
   *
   * @param window within the picture
   * @param width of the print in points
   * @throws PictureException where the file can't be read
   */
  PDImageXObject cut(PDDocument document, Picture picture, Path file, Box window, double width)
      throws PictureException {
    Read read = kept.get(picture);
    if (read == null) {
      read = read(picture, file);
      kept.put(picture, read);
      if (kept.size() > KEPT) {
        kept.remove(kept.keySet().iterator().next());
      }
    }
    BufferedImage cut = crop(read, window);
    int times = (int) Math.max(1, cut.getWidth() / (width * PRINTED));
    BufferedImage fine = times == 1 ? cut : averaged(cut, times);
    try {
      return picture instanceof Page
          ? LosslessFactory.createFromImage(document, fine)
          : JPEGFactory.createFromImage(document, fine, JPEG_QUALITY);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static Read read(Picture picture, Path file) throws PictureException {
    return PictureFormat.of(file) == PictureFormat.PDF && picture instanceof Page page
        ? rendered(page, file)
        : decoded(picture, file);
  }

  private static Read rendered(Page page, Path file) throws PictureException {
    double units = page.width() * page.height();
    double scale = Math.min(PAGE_SCALE, Math.sqrt(MOST / units));
    try (PdfPages pages = PdfPages.open(file)) {
      Box all = new Box(0, 0, page.width(), page.height());
      BufferedImage image = pages.render(page.number(), all, scale, PdfPages.Finish.SMOOTH);
      return new Read(grey(image), scale);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static Read decoded(Picture picture, Path file) throws PictureException {
    PhotoFile photo = PhotoFile.probe(file);
    double pixels = (double) photo.width() * photo.height();
    int step = (int) Math.max(1, Math.ceil(Math.sqrt(pixels / MOST)));
    int width = PhotoRows.reduced(photo.width(), step);
    int height = PhotoRows.reduced(photo.height(), step);
    int bands = PhotoRows.bands(photo);
    BufferedImage image =
        new BufferedImage(
            width,
            height,
            bands == 1 ? BufferedImage.TYPE_BYTE_GRAY : BufferedImage.TYPE_3BYTE_BGR);
    byte[] to = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    PhotoRows.decode(
        photo,
        step,
        (y, samples) -> {
          int at = y * width * bands;
          for (int x = 0; x < width * bands; x += bands) {
            for (int band = 0; band < bands; band++) {
              to[at + x + band] = samples[x + bands - 1 - band];
            }
          }
        },
        Progress.UNWATCHED);
    BufferedImage kept = picture instanceof Page ? grey(image) : image;
    return new Read(kept, width / picture.width());
  }

  private static BufferedImage grey(BufferedImage image) {
    if (image.getType() == BufferedImage.TYPE_BYTE_GRAY) {
      return image;
    }
    BufferedImage grey =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
    byte[] to = ((DataBufferByte) grey.getRaster().getDataBuffer()).getData();
    int[] row = new int[image.getWidth()];
    for (int y = 0; y < image.getHeight(); y++) {
      image.getRGB(0, y, row.length, 1, row, 0, row.length);
      for (int x = 0; x < row.length; x++) {
        int rgb = row[x];
        // luma after ITU-R BT.601
        int luma = 299 * (rgb >> 16 & 0xFF) + 587 * (rgb >> 8 & 0xFF) + 114 * (rgb & 0xFF);
        to[y * row.length + x] = (byte) (luma / 1000);
      }
    }
    return grey;
  }

  /** The window's pixels, whole ones: up to one more at each edge is left out. */
  private static BufferedImage crop(Read read, Box window) {
    BufferedImage all = read.image();
    int left = clamped(window.left() * read.perUnit(), all.getWidth() - 1);
    int top = clamped(window.top() * read.perUnit(), all.getHeight() - 1);
    int right = clamped(window.right() * read.perUnit(), all.getWidth());
    int bottom = clamped(window.bottom() * read.perUnit(), all.getHeight());
    BufferedImage cut =
        new BufferedImage(Math.max(1, right - left), Math.max(1, bottom - top), all.getType());
    Graphics2D g = cut.createGraphics();
    g.drawImage(all, -left, -top, null);
    g.dispose();
    return cut;
  }

  private static int clamped(double value, int most) {
    return (int) Math.max(0, Math.min(most, Math.round(value)));
  }

  /** Smaller by a whole number, each pixel the mean of those it stands for. */
  private static BufferedImage averaged(BufferedImage image, int times) {
    int width = Math.max(1, image.getWidth() / times);
    int height = Math.max(1, image.getHeight() / times);
    BufferedImage small = new BufferedImage(width, height, image.getType());
    int bands = image.getRaster().getNumBands();
    byte[] from = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    byte[] to = ((DataBufferByte) small.getRaster().getDataBuffer()).getData();
    int deep = Math.min(times, image.getHeight());
    int wide = Math.min(times, image.getWidth());
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        for (int band = 0; band < bands; band++) {
          int sum = 0;
          for (int dy = 0; dy < deep; dy++) {
            int at = ((y * times + dy) * image.getWidth() + x * times) * bands + band;
            for (int dx = 0; dx < wide; dx++) {
              sum += from[at + dx * bands] & 0xFF;
            }
          }
          to[(y * width + x) * bands + band] = (byte) (sum / (deep * wide));
        }
      }
    }
    return small;
  }
}
