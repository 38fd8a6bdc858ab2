package org.relegend.viewer.tile;

import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.w3c.dom.Element;

/** How tiles are coded on disk, and turned into what is drawn fastest. */
enum TileFormat {
  /** For photos that were JPEG already. */
  JPEG("jpeg", 0.92f),
  /** For drawings and scans that were stored without loss. */
  PNG("png", 0.7f);

  private final String format;
  private final float quality;

  TileFormat(String format, float quality) {
    this.format = format;
    this.quality = quality;
  }

  /** Codes the samples of a tile: one or three bytes a pixel. */
  byte[] encode(int width, int height, byte[] samples) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName(format).next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(samples.length / 8);
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(quality);
      BufferedImage image = image(width, height, samples);
      writer.write(null, new IIOImage(image, null, metadata(writer, image, how)), how);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /**
   * JPEG otherwise keeps one sample of colour for four pixels, which blurs the bands of resistors
   * once a photo is reduced.
   */
  private IIOMetadata metadata(ImageWriter writer, BufferedImage image, ImageWriteParam how)
      throws IOException {
    IIOMetadata metadata =
        writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), how);
    if (this == JPEG && image.getRaster().getNumBands() == 3) {
      Element tree = (Element) metadata.getAsTree(metadata.getNativeMetadataFormatName());
      Element luma = (Element) tree.getElementsByTagName("componentSpec").item(0);
      luma.setAttribute("HsamplingFactor", "1");
      luma.setAttribute("VsamplingFactor", "1");
      metadata.setFromTree(metadata.getNativeMetadataFormatName(), tree);
    }
    return metadata;
  }

  /** Reads a coded tile. */
  static BufferedImage decode(byte[] coded) throws IOException {
    try (MemoryCacheImageInputStream in =
        new MemoryCacheImageInputStream(new ByteArrayInputStream(coded))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        throw new IOException("a kept tile is damaged");
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in, true, true);
        return drawable(reader.read(0));
      } finally {
        reader.dispose();
      }
    } catch (RuntimeException damaged) {
      throw new IOException("a kept tile is damaged", damaged);
    }
  }

  /** An image over the samples of a tile: one or three bytes a pixel. */
  static BufferedImage image(int width, int height, byte[] samples) {
    int bands = samples.length / (width * height);
    if (bands == 1) {
      BufferedImage grey = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
      byte[] own = ((DataBufferByte) grey.getRaster().getDataBuffer()).getData();
      System.arraycopy(samples, 0, own, 0, own.length);
      return grey;
    }
    WritableRaster raster =
        Raster.createInterleavedRaster(
            new DataBufferByte(samples, samples.length),
            width,
            height,
            width * bands,
            bands,
            new int[] {0, 1, 2},
            new Point(0, 0));
    ComponentColorModel colours =
        new ComponentColorModel(
            ColorSpace.getInstance(ColorSpace.CS_sRGB),
            false,
            false,
            ComponentColorModel.OPAQUE,
            DataBuffer.TYPE_BYTE);
    return new BufferedImage(colours, raster, false, null);
  }

  /** The same pixels in the layout that is drawn fastest. */
  static BufferedImage drawable(BufferedImage image) {
    if (image.getType() == BufferedImage.TYPE_INT_RGB) {
      return image;
    }
    BufferedImage plain =
        ImageTypeSpecifier.createFromBufferedImageType(BufferedImage.TYPE_INT_RGB)
            .createBufferedImage(image.getWidth(), image.getHeight());
    Graphics2D g = plain.createGraphics();
    g.drawImage(image, 0, 0, null);
    g.dispose();
    return plain;
  }
}
