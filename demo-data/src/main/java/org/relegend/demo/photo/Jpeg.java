package org.relegend.demo.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes baseline JPEG files, without any notes of camera or place. */
public final class Jpeg {
  private Jpeg() {}

  /** The file's bytes; quality from 0 to 1. */
  public static byte[] bytes(BufferedImage image, float quality) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try {
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(quality);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
        writer.setOutput(stream);
        writer.write(null, new IIOImage(image, null, null), how);
      }
      return out.toByteArray();
    } finally {
      writer.dispose();
    }
  }
}
