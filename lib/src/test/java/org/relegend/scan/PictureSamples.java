package org.relegend.scan;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Pictures that tests make for themselves. */
public final class PictureSamples {
  private PictureSamples() {}

  /** Coloured discs on a shaded ground, the same for the same seed. */
  public static BufferedImage discs(int width, int height, long seed) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D g = image.createGraphics();
    g.setPaint(
        new java.awt.GradientPaint(0, 0, new Color(30, 90, 60), width, height, Color.LIGHT_GRAY));
    g.fillRect(0, 0, width, height);
    Random random = new Random(seed);
    int most = Math.max(4, Math.min(width, height) / 6);
    for (int i = 0; i < 400; i++) {
      int size = 2 + random.nextInt(most);
      g.setColor(new Color(random.nextInt(0x1000000)));
      g.fillOval(random.nextInt(width), random.nextInt(height), size, size);
    }
    g.dispose();
    return image;
  }

  /** Every pixel of its own colour, from which its column and row can be told; up to 256 x 256. */
  public static BufferedImage coordinates(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        image.setRGB(x, y, x << 16 | y << 8 | 0x55);
      }
    }
    return image;
  }

  public static byte[] jpeg(BufferedImage image, boolean progressive) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam how = writer.getDefaultWriteParam();
    how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    how.setCompressionQuality(0.9f);
    if (progressive) {
      how.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
    }
    return encoded(writer, how, image);
  }

  public static byte[] png(BufferedImage image, boolean interlaced) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    ImageWriteParam how = writer.getDefaultWriteParam();
    if (interlaced) {
      how.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
    }
    return encoded(writer, how, image);
  }

  public static byte[] tiff(BufferedImage image) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
    return encoded(writer, writer.getDefaultWriteParam(), image);
  }

  private static byte[] encoded(ImageWriter writer, ImageWriteParam how, BufferedImage image)
      throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), how);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** A JPEG with an Exif segment that holds an orientation. */
  public static byte[] withOrientation(byte[] jpeg, int value) {
    ByteBuffer tiff = tiffHeader(1);
    putOrientation(tiff, value);
    tiff.putInt(0);
    return withExif(jpeg, tiff);
  }

  /** A JPEG with a smaller one as its preview. */
  public static byte[] withThumbnail(byte[] jpeg, byte[] thumbnail) {
    ByteBuffer tiff = tiffHeader(1);
    putOrientation(tiff, 1);
    int second = 8 + 2 + 12 + 4;
    tiff.putInt(second);
    tiff.putShort((short) 3);
    tiff.putShort((short) 0x103).putShort((short) 3).putInt(1).putShort((short) 6);
    tiff.putShort((short) 0);
    int data = second + 2 + 3 * 12 + 4;
    tiff.putShort((short) 0x201).putShort((short) 4).putInt(1).putInt(data);
    tiff.putShort((short) 0x202).putShort((short) 4).putInt(1).putInt(thumbnail.length);
    tiff.putInt(0);
    tiff.put(thumbnail);
    return withExif(jpeg, tiff);
  }

  private static ByteBuffer tiffHeader(int entries) {
    ByteBuffer tiff = ByteBuffer.allocate(65_000);
    tiff.put("MM\0*".getBytes(StandardCharsets.ISO_8859_1)).putInt(8).putShort((short) entries);
    return tiff;
  }

  private static void putOrientation(ByteBuffer tiff, int value) {
    tiff.putShort((short) 0x112).putShort((short) 3).putInt(1).putShort((short) value);
    tiff.putShort((short) 0);
  }

  private static byte[] withExif(byte[] jpeg, ByteBuffer tiff) {
    byte[] marker = "Exif\0\0".getBytes(StandardCharsets.ISO_8859_1);
    ByteBuffer out = ByteBuffer.allocate(jpeg.length + 4 + marker.length + tiff.position());
    out.put(jpeg, 0, 2);
    out.putShort((short) 0xFFE1).putShort((short) (2 + marker.length + tiff.position()));
    out.put(marker).put(tiff.duplicate().flip());
    out.put(jpeg, 2, jpeg.length - 2);
    return out.array();
  }

  /** A PNG that says it has so many pixels and holds none. */
  public static byte[] hollowPng(int width, int height) {
    ByteBuffer header = ByteBuffer.allocate(17).put("IHDR".getBytes(StandardCharsets.US_ASCII));
    header.putInt(width).putInt(height).put((byte) 8).put((byte) 2).put(new byte[3]);
    CRC32 sum = new CRC32();
    sum.update(header.array());
    ByteBuffer out = ByteBuffer.allocate(8 + 4 + 17 + 4);
    out.put("\u0089PNG\r\n\u001a\n".getBytes(StandardCharsets.ISO_8859_1)).putInt(13);
    return out.put(header.array()).putInt((int) sum.getValue()).array();
  }

  /** A JPEG whose header was changed to say it has so many pixels. */
  public static byte[] swollenJpeg(byte[] jpeg, int width, int height) {
    byte[] changed = jpeg.clone();
    for (int i = 2; i + 8 < changed.length; i++) {
      if ((changed[i] & 0xFF) == 0xFF && (changed[i + 1] & 0xFF) == 0xC0) {
        ByteBuffer.wrap(changed, i + 5, 4).putShort((short) height).putShort((short) width);
        return changed;
      }
    }
    throw new IllegalArgumentException("no frame header");
  }

  public static Path file(Path folder, String name, byte[] content) throws IOException {
    return Files.write(folder.resolve(name), content);
  }
}
