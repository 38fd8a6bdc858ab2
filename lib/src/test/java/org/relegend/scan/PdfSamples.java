package org.relegend.scan;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Random;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.graphics.image.CCITTFactory;
import org.apache.pdfbox.util.Matrix;

/** PDF files that tests make for themselves. */
public final class PdfSamples {
  static final PDRectangle A3_ACROSS = new PDRectangle(1191, 842);

  private PdfSamples() {}

  /** Draws onto a page. */
  @FunctionalInterface
  interface Drawing {
    void on(PDPageContentStream page) throws IOException;
  }

  static byte[] page(PDRectangle size, int rotation, Drawing drawing) throws IOException {
    try (PDDocument document = new PDDocument()) {
      addPage(document, size, rotation, drawing);
      return bytes(document);
    }
  }

  static PDPage addPage(PDDocument document, PDRectangle size, int rotation, Drawing drawing)
      throws IOException {
    PDPage page = new PDPage(size);
    page.setRotation(rotation);
    document.addPage(page);
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      drawing.on(content);
    }
    return page;
  }

  static PDFont sans() {
    return new PDType1Font(Standard14Fonts.FontName.HELVETICA);
  }

  /** Writes a text whose baseline starts at a point of the page, y upwards, turned in degrees. */
  static void write(
      PDPageContentStream page, String text, double size, double x, double y, double degrees)
      throws IOException {
    page.beginText();
    page.setFont(sans(), (float) size);
    page.setTextMatrix(
        new Matrix(
            new AffineTransform(
                Math.cos(Math.toRadians(degrees)),
                Math.sin(Math.toRadians(degrees)),
                -Math.sin(Math.toRadians(degrees)),
                Math.cos(Math.toRadians(degrees)),
                x,
                y)));
    page.showText(text);
    page.endText();
  }

  static void fill(PDPageContentStream page, Color colour, double x, double y, double w, double h)
      throws IOException {
    page.setNonStrokingColor(colour);
    page.addRect((float) x, (float) y, (float) w, (float) h);
    page.fill();
  }

  /** An A3 page that is one bilevel scan of so many dots per inch, full of thin lines. */
  public static byte[] scannedA3(int dpi) throws IOException {
    int width = (int) Math.round(1191 / 72.0 * dpi);
    int height = (int) Math.round(842 / 72.0 * dpi);
    BufferedImage scan = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_BINARY);
    Graphics2D g = scan.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, width, height);
    g.setColor(Color.BLACK);
    Random random = new Random(11);
    for (int i = 0; i < 3000; i++) {
      int x = random.nextInt(width);
      int y = random.nextInt(height);
      int length = random.nextInt(width / 8);
      g.fillRect(x, y, random.nextBoolean() ? length : 3, random.nextBoolean() ? 3 : length / 2);
    }
    g.dispose();
    try (PDDocument document = new PDDocument()) {
      var image = CCITTFactory.createFromImage(document, scan);
      addPage(document, A3_ACROSS, 0, content -> content.drawImage(image, 0, 0, 1191, 842));
      return bytes(document);
    }
  }

  static byte[] locked(String owner, String user) throws IOException {
    try (PDDocument document = new PDDocument()) {
      addPage(document, PDRectangle.A4, 0, content -> write(content, "R101", 10, 100, 100, 0));
      AccessPermission may = new AccessPermission();
      may.setCanExtractContent(false);
      document.protect(new StandardProtectionPolicy(owner, user, may));
      return bytes(document);
    }
  }

  static byte[] bytes(PDDocument document) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out);
    return out.toByteArray();
  }
}
