package org.relegend.scan;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifThumbnailDirectory;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;

/**
 * A photo, or a scan that is an image, as its header describes it.
 *
 * @param width of the stored pixels, before the orientation is applied
 * @param height of the stored pixels
 */
public record PhotoFile(
    Path path, PictureFormat format, int width, int height, ExifOrientation orientation) {
  /** The most pixels that can be handled, in millions. */
  public static final int MAX_MEGAPIXELS = 120;

  private static final int MAX_SIDE = 60_000;
  private static final int MAX_THUMBNAIL_BYTES = 65_536;

  /**
   * Reads the header. Damage further on shows only when the pixels are read.
   *
   * @throws PictureException where it is no picture of a known kind, damaged or too large
   */
  public static PhotoFile probe(Path path) throws PictureException {
    PictureFormat format = PictureFormat.of(path);
    if (!format.isImage()) {
      throw new PictureException(
          PictureException.Kind.UNKNOWN_FORMAT,
          path,
          "this is a PDF; add it as a page of the schematic, or save it as JPEG or PNG");
    }
    try (ImageInputStream in = new FileImageInputStream(path.toFile())) {
      ImageReader reader = reader(format);
      try {
        reader.setInput(in, true, true);
        return checked(
            new PhotoFile(
                path, format, reader.getWidth(0), reader.getHeight(0), orientation(path)));
      } finally {
        reader.dispose();
      }
    } catch (IOException | RuntimeException problem) {
      throw damaged(path, problem);
    }
  }

  /** Width once upright. */
  public int seenWidth() {
    return orientation.seenWidth(width, height);
  }

  /** Height once upright. */
  public int seenHeight() {
    return orientation.seenHeight(width, height);
  }

  /**
   * The small preview that cameras put into their files, as stored, not turned. Empty where there
   * is none, it can't be read, or its shape isn't that of the picture.
   */
  public Optional<BufferedImage> thumbnail() {
    try (RandomAccessFile in = new RandomAccessFile(path.toFile(), "r")) {
      ExifThumbnailDirectory directory =
          metadata(path).getFirstDirectoryOfType(ExifThumbnailDirectory.class);
      if (directory == null) {
        return Optional.empty();
      }
      // metadata-extractor counts the offset from the start of the Exif block and tells its own
      // start
      Long offset = directory.getLongObject(ExifThumbnailDirectory.TAG_THUMBNAIL_OFFSET);
      Integer length = directory.getInteger(ExifThumbnailDirectory.TAG_THUMBNAIL_LENGTH);
      if (offset == null || length == null || length <= 0 || length > MAX_THUMBNAIL_BYTES) {
        return Optional.empty();
      }
      byte[] bytes = new byte[length];
      in.seek(exifStart(in) + offset);
      in.readFully(bytes);
      return Optional.ofNullable(ImageIO.read(new ByteArrayInputStream(bytes)))
          .filter(this::hasSameShape);
    } catch (IOException | ImageProcessingException | RuntimeException unusable) {
      return Optional.empty(); // a preview is a kindness: without it the picture itself comes soon
    }
  }

  static ImageReader reader(PictureFormat format) {
    Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format.name());
    if (!readers.hasNext()) {
      throw new IllegalStateException("this Java has no reader for " + format);
    }
    return readers.next();
  }

  static PictureException damaged(Path path, Throwable problem) {
    String why = problem.getMessage() == null ? problem.toString() : problem.getMessage();
    boolean unusualColours = problem instanceof IIOException && why.contains("Unsupported Image");
    return new PictureException(
        PictureException.Kind.DAMAGED,
        path,
        unusualColours
            ? "its colours are meant for printing (CMYK); save it as an RGB picture"
            : "the picture is damaged or cut off (%s); copy it again from where it came from"
                .formatted(why),
        problem);
  }

  private static PhotoFile checked(PhotoFile photo) throws PictureException {
    long pixels = (long) photo.width * photo.height;
    if (pixels > MAX_MEGAPIXELS * 1_000_000L || photo.width > MAX_SIDE || photo.height > MAX_SIDE) {
      throw new PictureException(
          PictureException.Kind.TOO_LARGE,
          photo.path,
          "the picture says it has %d x %d pixels; the most is %d megapixels: make it smaller first"
              .formatted(photo.width, photo.height, MAX_MEGAPIXELS));
    }
    return photo;
  }

  private static ExifOrientation orientation(Path path) {
    try {
      ExifIFD0Directory directory = metadata(path).getFirstDirectoryOfType(ExifIFD0Directory.class);
      if (directory != null && directory.containsTag(ExifIFD0Directory.TAG_ORIENTATION)) {
        Integer value = directory.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
        if (value != null && value >= 1 && value <= 8) {
          return new ExifOrientation(value);
        }
      }
    } catch (IOException | ImageProcessingException unreadable) {
      return ExifOrientation.UPRIGHT; // odd notes of a camera don't make the pixels unreadable
    }
    return ExifOrientation.UPRIGHT;
  }

  private static Metadata metadata(Path path) throws IOException, ImageProcessingException {
    return ImageMetadataReader.readMetadata(path.toFile());
  }

  private boolean hasSameShape(BufferedImage small) {
    double wanted = (double) width / height;
    double got = (double) small.getWidth() / small.getHeight();
    return Math.abs(got / wanted - 1) < 0.02;
  }

  /** The start of the TIFF header in a JPEG's first Exif segment. */
  private static long exifStart(RandomAccessFile in) throws IOException {
    return JpegSegments.of(in).exifStart();
  }
}
