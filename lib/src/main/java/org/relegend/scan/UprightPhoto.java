package org.relegend.scan;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.CancellationException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.FileImageOutputStream;

/**
 * Turns the pixels of a photo as its camera noted, once, so that no viewer can show it otherwise
 * and marks never drift. The photo is never in memory as a whole: its pixels pass through a file.
 */
public final class UprightPhoto {
  private static final float QUALITY = 0.95f;
  private static final int STRIP = 256;

  private final PhotoFile photo;
  private final int bands;
  private final Progress progress;

  private UprightPhoto(PhotoFile photo, int bands, Progress progress) {
    this.photo = photo;
    this.bands = bands;
    this.progress = progress;
  }

  /** The ending that {@link #write} needs: jpg, or png for what was stored without loss. */
  public static String ending(PhotoFile photo) {
    return photo.format() == PictureFormat.JPEG ? "jpg" : "png";
  }

  /**
   * Checks all pixels and writes the photo upright to a new file. Where it is upright already, the
   * file is copied byte by byte; else it is encoded anew, without its other notes.
   *
   * @param target must not exist; nothing is left there where this fails
   * @throws PictureException where the photo is damaged or the target can't be written
   * @throws CancellationException where the progress says so
   */
  public static void write(PhotoFile photo, Path target, Progress progress)
      throws PictureException {
    boolean done = false;
    try {
      if (photo.orientation().equals(ExifOrientation.UPRIGHT)
          && photo.format() != PictureFormat.TIFF) {
        PhotoRows.decode(photo, (y, samples) -> {}, progress);
        Files.copy(photo.path(), target);
      } else {
        Files.createFile(target);
        new UprightPhoto(photo, PhotoRows.bands(photo), progress).turn(target);
      }
      done = true;
    } catch (FileAlreadyExistsException taken) {
      done = true; // not ours to delete
      throw notWritten(target, "there is a file of this name already", taken);
    } catch (IOException problem) {
      throw notWritten(target, "it can't be written (%s)".formatted(problem.getMessage()), problem);
    } finally {
      if (!done) {
        target.toFile().delete();
      }
    }
  }

  private static PictureException notWritten(Path target, String why, IOException problem) {
    return new PictureException(PictureException.Kind.NOT_WRITTEN, target, why, problem);
  }

  private void turn(Path target) throws IOException, PictureException {
    Path folder = target.toAbsolutePath().getParent();
    Path pixels = Files.createTempFile(folder, ".turning-", ".tmp");
    try (FileChannel channel =
        FileChannel.open(
            pixels,
            StandardOpenOption.READ,
            StandardOpenOption.WRITE,
            StandardOpenOption.DELETE_ON_CLOSE)) {
      PhotoRows.decode(
          photo,
          (y, samples) -> writeFully(channel, ByteBuffer.wrap(samples), (long) y * samples.length),
          fraction -> progress.at(fraction / 2));
      encode(target, new Turned(channel));
    } finally {
      Files.deleteIfExists(pixels);
    }
  }

  private static void writeFully(FileChannel channel, ByteBuffer bytes, long at)
      throws IOException {
    long position = at;
    while (bytes.hasRemaining()) {
      position += channel.write(bytes, position);
    }
  }

  private void encode(Path target, Turned pixels) throws IOException {
    String format = photo.format() == PictureFormat.JPEG ? "jpeg" : "png";
    ImageWriter writer = ImageIO.getImageWritersByFormatName(format).next();
    try (FileImageOutputStream out = new FileImageOutputStream(target.toFile())) {
      writer.setOutput(out);
      ImageWriteParam how = writer.getDefaultWriteParam();
      if (format.equals("jpeg")) {
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(QUALITY);
      }
      try {
        writer.write(null, new IIOImage(pixels.image(), null, null), how);
      } catch (Turned.Unread unread) {
        throw unread.problem;
      }
    } finally {
      writer.dispose();
    }
  }

  /** The stored pixels in a file, seen upright row by row; keeps a strip of rows in memory. */
  private final class Turned extends RowRaster {
    private final FileChannel channel;
    private final byte[] strip = new byte[STRIP * width * numBands];
    private int stripTop = -1;

    Turned(FileChannel channel) {
      super(photo.seenWidth(), photo.seenHeight(), bands);
      this.channel = channel;
    }

    /** Carries an I/O problem out through the image writer. */
    private static final class Unread extends RuntimeException {
      private static final long serialVersionUID = 1L;
      private final transient IOException problem;

      Unread(IOException problem) {
        super(problem);
        this.problem = problem;
      }
    }

    @Override
    void put(int y, byte[] row) {
      throw new UnsupportedOperationException("rows are only fetched");
    }

    @Override
    void fetch(int y, byte[] row) {
      if (!progress.at(0.5 + 0.5 * y / height)) {
        throw new CancellationException("turning " + photo.path());
      }
      int top = y - y % STRIP;
      if (top != stripTop) {
        try {
          load(top, Math.min(STRIP, height - top));
          stripTop = top;
        } catch (IOException problem) {
          throw new Unread(problem);
        }
      }
      System.arraycopy(strip, (y - top) * row.length, row, 0, row.length);
    }

    private void load(int top, int rows) throws IOException {
      ExifOrientation turn = photo.orientation();
      if (turn.swaps()) {
        for (int stored = 0; stored < photo.height(); stored++) {
          loadAsColumn(stored, top, rows);
        }
      } else {
        for (int i = 0; i < rows; i++) {
          int y = turn.rowsReversed() ? photo.height() - 1 - top - i : top + i;
          byte[] line = read(y, 0, photo.width());
          copy(line, i * width, 1, width, turn.columnsReversed());
        }
      }
    }

    /** Part of one stored row becomes part of one column of the strip. */
    private void loadAsColumn(int storedRow, int top, int rows) throws IOException {
      ExifOrientation turn = photo.orientation();
      int from = turn.columnsReversed() ? photo.width() - top - rows : top;
      int x = turn.rowsReversed() ? photo.height() - 1 - storedRow : storedRow;
      copy(read(storedRow, from, rows), x, width, rows, turn.columnsReversed());
    }

    /** Puts pixels at so many places of the strip, {@code apart} pixels from one to the next. */
    private void copy(byte[] pixels, int first, int apart, int count, boolean reversed) {
      for (int i = 0; i < count; i++) {
        int source = (reversed ? count - 1 - i : i) * numBands;
        int place = (first + i * apart) * numBands;
        for (int band = 0; band < numBands; band++) {
          strip[place + band] = pixels[source + band];
        }
      }
    }

    private byte[] read(int row, int x, int count) throws IOException {
      byte[] pixels = new byte[count * numBands];
      ByteBuffer buffer = ByteBuffer.wrap(pixels);
      long position = ((long) row * photo.width() + x) * numBands;
      while (buffer.hasRemaining()) {
        int got = channel.read(buffer, position);
        if (got < 0) {
          throw new IOException("the pixels in passing were cut off");
        }
        position += got;
      }
      return pixels;
    }
  }
}
