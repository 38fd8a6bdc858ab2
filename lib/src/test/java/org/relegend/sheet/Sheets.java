package org.relegend.sheet;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Looks at printed sheets from outside, as a reader of PDFs does. */
final class Sheets implements AutoCloseable {
  static final Path ROOT = Path.of(System.getProperty("relegend.root", ".."));
  static final Path DEMO = ROOT.resolve("demo-data/map");

  private final PDDocument document;

  Sheets(byte[] pdf) {
    try {
      this.document = Loader.loadPDF(pdf);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  PDDocument document() {
    return document;
  }

  int count() {
    return document.getNumberOfPages();
  }

  /** A page's text with every run of blanks as one space. */
  String text(int page) {
    try {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setStartPage(page);
      stripper.setEndPage(page);
      return stripper.getText(document).replaceAll("\\s+", " ");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  String text() {
    StringBuilder all = new StringBuilder();
    for (int page = 1; page <= count(); page++) {
      all.append(text(page));
    }
    return all.toString();
  }

  /** The first page with such a text. */
  int pageOf(String text) {
    return pageOf(text, 1);
  }

  /** The first page with such a text, from this one on. */
  int pageOf(String text, int from) {
    for (int page = from; page <= count(); page++) {
      if (text(page).contains(text)) {
        return page;
      }
    }
    throw new AssertionError("no page has \"" + text + "\"");
  }

  /** A word at its place, in points from the upper left corner. */
  record Word(String text, double x, double y) {}

  List<Word> words(int page) {
    List<Word> words = new ArrayList<>();
    try {
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> at) {
              double x = 0;
              for (TextPosition position : at) {
                x += (position.getXDirAdj() + position.getWidthDirAdj() / 2) / at.size();
              }
              words.add(new Word(text, x, at.get(0).getYDirAdj() - at.get(0).getHeightDir() / 2));
            }
          };
      stripper.setStartPage(page);
      stripper.setEndPage(page);
      stripper.writeText(document, new StringWriter());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return words;
  }

  BufferedImage rendered(int page, double perPoint) {
    try {
      return new PDFRenderer(document).renderImage(page - 1, (float) perPoint, ImageType.RGB);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static byte[] png(BufferedImage image) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    javax.imageio.ImageIO.write(image, "png", out);
    return out.toByteArray();
  }

  /** Luma after ITU-R BT.601, as print without colour shows it. */
  static int grey(int rgb) {
    return (299 * (rgb >> 16 & 0xFF) + 587 * (rgb >> 8 & 0xFF) + 114 * (rgb & 0xFF)) / 1000;
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
