package org.relegend.scan;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBufferByte;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Node;

/**
 * Decodes a photo row by row, as stored, from top to bottom. JPEG files and ordinary PNG files are
 * never in memory as a whole; other kinds are read in strips where they allow it.
 */
public final class PhotoRows {
  /** Takes the rows. */
  @FunctionalInterface
  public interface Sink {
    /**
     * One row.
     *
     * @param y from 0, each once and in order
     * @param samples one byte a pixel where the photo is grey, else red, green, blue; used again
     *     for the next row, so it is to be copied where it is kept
     * @throws IOException where it can't be kept
     */
    void row(int y, byte[] samples) throws IOException;
  }

  /** What an undivided raster may take while it is read, in bytes. */
  private static final long WHOLE_LIMIT = 128L << 20;

  private static final int STRIP = 256;

  private final PhotoFile photo;
  private final int step;
  private final Progress progress;
  private final List<String> warnings = new ArrayList<>();

  private PhotoRows(PhotoFile photo, int step, Progress progress) {
    this.photo = photo;
    this.step = step;
    this.progress = progress;
  }

  /** Bytes a pixel that {@link #decode} gives for this photo: 1 or 3. */
  public static int bands(PhotoFile photo) throws PictureException {
    return new PhotoRows(photo, 1, Progress.UNWATCHED)
        .reading(reader -> opaqueBands(bandsOf(reader)));
  }

  /**
   * Decodes all of it.
   *
   * @throws PictureException where it is damaged, cut off or of an unusual make
   * @throws CancellationException where the progress says so
   */
  public static void decode(PhotoFile photo, Sink sink, Progress progress) throws PictureException {
    decode(photo, 1, sink, progress);
  }

  /**
   * Decodes every {@code step}-th pixel of every {@code step}-th row, beginning with the first: the
   * quickest way to something that can be shown. Rows are numbered as given.
   *
   * @throws PictureException where it is damaged, cut off or of an unusual make
   * @throws CancellationException where the progress says so
   */
  public static void decode(PhotoFile photo, int step, Sink sink, Progress progress)
      throws PictureException {
    PhotoRows rows = new PhotoRows(photo, step, progress);
    rows.reading(
        reader -> {
          rows.decode(reader, sink);
          return 0;
        });
    rows.refuseCutOff();
  }

  /** Rows or columns that remain of so many. */
  public static int reduced(int size, int step) {
    return (size + step - 1) / step;
  }

  @FunctionalInterface
  private interface Decoder<T> {
    T with(ImageReader reader) throws IOException;
  }

  private <T> T reading(Decoder<T> work) throws PictureException {
    try (ImageInputStream in = new FileImageInputStream(photo.path().toFile())) {
      ImageReader reader = PhotoFile.reader(photo.format());
      try {
        reader.setInput(in, true, photo.format() != PictureFormat.PNG);
        reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning));
        return work.with(reader);
      } finally {
        reader.dispose();
      }
    } catch (CancellationException stopped) {
      throw stopped;
    } catch (IOException | RuntimeException problem) {
      throw PhotoFile.damaged(photo.path(), problem);
    }
  }

  private void decode(ImageReader reader, Sink sink) throws IOException {
    int bands = bandsOf(reader);
    if (flowsInRows(reader)) {
      OpaqueRows raster = new OpaqueRows(reader, bands, coarsePasses(), sink);
      ImageReadParam how = reader.getDefaultReadParam();
      how.setSourceSubsampling(step, step, 0, 0);
      how.setDestination(raster.image());
      reader.read(0, how);
      raster.finish();
    } else {
      decodeInStrips(reader, opaqueBands(bands), sink);
    }
  }

  /**
   * Readers show every pass over a progressive JPEG, however coarse, and can't be told otherwise:
   * only the last is passed on.
   */
  private int coarsePasses() throws IOException {
    if (photo.format() != PictureFormat.JPEG) {
      return 0;
    }
    try (RandomAccessFile in = new RandomAccessFile(photo.path().toFile(), "r")) {
      return Math.max(1, JpegSegments.of(in).scans()) - 1;
    }
  }

  private boolean flowsInRows(ImageReader reader) throws IOException {
    if (photo.format() == PictureFormat.JPEG) {
      return true;
    }
    ColorModel colours = reader.getRawImageType(0).getColorModel();
    return photo.format() == PictureFormat.PNG
        && colours instanceof ComponentColorModel
        && colours.getComponentSize(0) == 8
        && !interlaced(reader.getImageMetadata(0));
  }

  private static boolean interlaced(IIOMetadata metadata) {
    Node header = metadata.getAsTree("javax_imageio_png_1.0").getFirstChild();
    return !header.getAttributes().getNamedItem("interlaceMethod").getNodeValue().equals("none");
  }

  private static int bandsOf(ImageReader reader) throws IOException {
    ImageTypeSpecifier raw = reader.getRawImageType(0);
    ImageTypeSpecifier type = raw == null ? reader.getImageTypes(0).next() : raw;
    ColorModel colours = type.getColorModel();
    if (colours instanceof IndexColorModel index) {
      return isGrey(index) ? 1 : 3;
    }
    int bands = type.getNumBands();
    boolean grey = colours == null ? bands == 1 : colours.getNumColorComponents() == 1;
    return (grey ? 1 : 3) + (colours != null && colours.hasAlpha() ? 1 : 0);
  }

  private static boolean isGrey(IndexColorModel colours) {
    for (int i = 0; i < colours.getMapSize(); i++) {
      int rgb = colours.getRGB(i);
      if ((rgb >> 16 & 0xFF) != (rgb & 0xFF) || (rgb >> 8 & 0xFF) != (rgb & 0xFF)) {
        return false;
      }
    }
    return true;
  }

  private static int opaqueBands(int bands) {
    return bands <= 2 ? 1 : 3;
  }

  /** Reads regions as high as a strip; the whole at once where it is small. */
  private void decodeInStrips(ImageReader reader, int bands, Sink sink) throws IOException {
    int bits = reader.getImageTypes(0).next().getColorModel().getPixelSize();
    long whole = (long) photo.width() * photo.height() * bits / 8;
    boolean small = whole <= WHOLE_LIMIT;
    if (!small && photo.format() == PictureFormat.PNG) {
      throw new IOException(
          "it is too large for an interlaced PNG; save it again without interlace");
    }
    int high = small ? photo.height() : STRIP * step;
    int y = 0;
    for (int top = 0; top < photo.height(); top += high) {
      ImageReadParam how = reader.getDefaultReadParam();
      how.setSourceRegion(
          new Rectangle(0, top, photo.width(), Math.min(high, photo.height() - top)));
      how.setSourceSubsampling(step, step, 0, 0);
      y = pass(reader.read(0, how), bands, y, sink);
    }
  }

  private int pass(BufferedImage strip, int bands, int firstRow, Sink sink) throws IOException {
    int type = bands == 1 ? BufferedImage.TYPE_BYTE_GRAY : BufferedImage.TYPE_3BYTE_BGR;
    BufferedImage line = new BufferedImage(strip.getWidth(), 1, type);
    byte[] samples = ((DataBufferByte) line.getRaster().getDataBuffer()).getData();
    byte[] ordered = new byte[samples.length];
    Graphics2D g = line.createGraphics();
    for (int i = 0; i < strip.getHeight(); i++) {
      g.setColor(Color.WHITE);
      g.fillRect(0, 0, line.getWidth(), 1);
      g.drawImage(strip, 0, -i, null);
      for (int k = 0; k < samples.length; k++) {
        ordered[k] = bands == 1 ? samples[k] : samples[k + 2 - 2 * (k % 3)];
      }
      sink.row(firstRow + i, ordered);
      tell(firstRow + i);
    }
    g.dispose();
    return firstRow + strip.getHeight();
  }

  private void tell(int row) {
    if (row % 16 == 0 && !progress.at((double) row * step / photo.height())) {
      throw new CancellationException("reading " + photo.path());
    }
  }

  private void refuseCutOff() throws PictureException {
    for (String warning : warnings) {
      if (warning.toLowerCase(Locale.ROOT).contains("premature end")) {
        throw new PictureException(
            PictureException.Kind.DAMAGED,
            photo.path(),
            "the picture is cut off (%s); copy it again from where it came from"
                .formatted(warning));
      }
    }
  }

  /** Passes rows on as they come, without their transparency. */
  private final class OpaqueRows extends RowRaster {
    private final ImageReader reader;
    private final Sink sink;
    private final byte[] opaque;
    private int coarsePassesLeft;
    private int next;
    private @Nullable IOException problem;
    private boolean stopped;

    OpaqueRows(ImageReader reader, int bands, int coarsePasses, Sink sink) {
      super(reduced(photo.width(), step), reduced(photo.height(), step), bands);
      this.reader = reader;
      this.coarsePassesLeft = coarsePasses;
      this.sink = sink;
      this.opaque = new byte[width * opaqueBands(bands)];
    }

    @Override
    void put(int y, byte[] row) {
      if (problem == null && !stopped && coarsePassesLeft == 0 && y == next) {
        pass(y, row);
      }
      coarsePassesLeft -= coarsePassesLeft > 0 && y == height - 1 ? 1 : 0;
      if (y % 16 == 0 && !progress.at((double) next / height)) {
        stopped = true;
        reader.abort();
      }
    }

    private void pass(int y, byte[] row) {
      next++;
      try {
        sink.row(y, numBands % 2 == 0 ? overWhite(row) : row);
      } catch (IOException trouble) {
        problem = trouble;
        reader.abort();
      }
    }

    @Override
    void fetch(int y, byte[] row) {
      throw new UnsupportedOperationException("rows are only passed on");
    }

    void finish() throws IOException {
      flush();
      if (stopped) {
        throw new CancellationException("reading " + photo.path());
      }
      if (problem != null) {
        throw problem;
      }
      if (next != height) {
        throw new IOException(
            "only %d of %d rows are there".formatted(next * step, photo.height()));
      }
    }

    private byte[] overWhite(byte[] row) {
      int colours = numBands - 1;
      for (int x = 0; x < width; x++) {
        int alpha = row[x * numBands + colours] & 0xFF;
        for (int band = 0; band < colours; band++) {
          int value = row[x * numBands + band] & 0xFF;
          opaque[x * colours + band] = (byte) (255 + (value - 255) * alpha / 255);
        }
      }
      return opaque;
    }
  }
}
