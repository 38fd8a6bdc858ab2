package org.relegend.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.map.Box;
import org.relegend.scan.PdfPages.Finish;

class PdfPagesTest {
  @TempDir Path folder;

  /**
   * A red square at the lower left of the media box (40, 20 from its corner), y upwards. ISO
   * 32000-1, 7.7.3.3: Rotate turns the page clockwise when displayed, and only the crop box is
   * seen.
   */
  @ParameterizedTest(name = "rotated {0}: {1} x {2}, square at {3}, {4}")
  @CsvSource({
    "0, 300, 200, 30, 165",
    "90, 200, 300, 15, 30",
    "180, 300, 200, 250, 15",
    "270, 200, 300, 165, 250"
  })
  void sizeAndRegion_areAsDisplayed(int rotation, int width, int height, int x, int y)
      throws Exception {
    byte[] content;
    try (PDDocument document = new PDDocument()) {
      var page =
          PdfSamples.addPage(
              document,
              new PDRectangle(400, 300),
              rotation,
              canvas -> PdfSamples.fill(canvas, Color.RED, 40, 20, 20, 20));
      page.setCropBox(new PDRectangle(10, 5, 300, 200));
      content = PdfSamples.bytes(document);
    }
    try (PdfPages pages = open(content)) {
      assertThat(pages.size(1)).isEqualTo(new PdfPages.Size(width, height));
      Box square = new Box(x, y, x + 20, y + 20);
      BufferedImage inside = pages.render(1, square, 4, Finish.SMOOTH);
      BufferedImage around = pages.render(1, square.grown(5), 4, Finish.SMOOTH);

      assertThat(inside.getWidth() + "x" + inside.getHeight()).isEqualTo("80x80");
      assertThat(share(inside, 0xFF0000)).isGreaterThan(0.999);
      assertThat(share(around, 0xFF0000)).isCloseTo(400.0 / 900, within(0.01));
      assertThat(share(around, 0xFFFFFF)).isCloseTo(500.0 / 900, within(0.01));
    }
  }

  @Test
  void render_regionEqualsTheSamePartOfTheWholePage() throws Exception {
    byte[] content =
        PdfSamples.page(
            PDRectangle.A4,
            0,
            page -> {
              for (int i = 0; i < 60; i++) {
                PdfSamples.write(
                    page, "R" + (100 + i) + " 4k7", 9, 20 + i % 6 * 90, 40 + i * 12, 0);
              }
            });
    try (PdfPages pages = open(content)) {
      BufferedImage whole =
          pages.render(
              1, new Box(0, 0, pages.size(1).width(), pages.size(1).height()), 2, Finish.SMOOTH);
      BufferedImage part = pages.render(1, new Box(100, 200, 300, 350), 2, Finish.SMOOTH);
      int differing = 0;
      for (int y = 0; y < part.getHeight(); y++) {
        for (int x = 0; x < part.getWidth(); x++) {
          differing += part.getRGB(x, y) == whole.getRGB(200 + x, 400 + y) ? 0 : 1;
        }
      }
      assertThat(differing).isZero();
      assertThat(share(part, 0xFFFFFF)).isBetween(0.5, 0.99);
    }
  }

  @Test
  void render_scanSmooth_keepsThinLinesAsGrey() throws Exception {
    try (PdfPages pages = open(PdfSamples.scannedA3(300))) {
      assertThat(pages.hasFinerFinish(1, 0.5)).isTrue();
      assertThat(pages.hasFinerFinish(1, 6)).isFalse();
      Box region = new Box(0, 0, 600, 400);

      double fine = ink(pages.render(1, region, 4.1667, Finish.SMOOTH));
      double smooth = ink(pages.render(1, region, 0.5, Finish.SMOOTH));

      assertThat(smooth).isCloseTo(fine, within(0.1 * fine));
    }
  }

  @Test
  void open_whatIsNoReadablePdf_isRefusedWithOneClearLine() throws Exception {
    byte[] good = PdfSamples.page(PDRectangle.A4, 0, page -> {});
    refused(new byte[0], PictureException.Kind.EMPTY, "0 bytes");
    refused(
        "%PDF-1.7\n".getBytes(StandardCharsets.US_ASCII), PictureException.Kind.DAMAGED, "cut off");
    refused(
        "hello".getBytes(StandardCharsets.US_ASCII), PictureException.Kind.UNKNOWN_FORMAT, "PDF");
    refused(Arrays.copyOf(good, good.length / 2), PictureException.Kind.DAMAGED, "cut off");
    refused(PdfSamples.locked("owner", "user"), PictureException.Kind.LOCKED, "password");
    refused(
        PictureSamples.png(PictureSamples.discs(9, 9, 1), false),
        PictureException.Kind.UNKNOWN_FORMAT,
        "PNG");
    try (PDDocument none = new PDDocument()) {
      refused(PdfSamples.bytes(none), PictureException.Kind.DAMAGED, "no pages");
    }
  }

  @Test
  void open_onlyTheOwnerHasAPassword_canBeShown() throws Exception {
    try (PdfPages pages = open(PdfSamples.locked("owner", ""))) {
      BufferedImage image = pages.render(1, new Box(90, 730, 150, 750), 2, Finish.QUICK);
      assertThat(share(image, 0xFFFFFF)).isLessThan(0.99);
    }
  }

  @Test
  void noSuchPage_isRefused() throws Exception {
    try (PdfPages pages = open(PdfSamples.page(PDRectangle.A4, 0, page -> {}))) {
      assertThat(pages.count()).isEqualTo(1);
      for (int page : new int[] {0, 2}) {
        assertThatThrownBy(() -> pages.size(page))
            .isInstanceOf(PictureException.class)
            .hasMessageContaining("there is no page " + page);
      }
    }
  }

  /** What can't be drawn is said, and not left out in silence. */
  @Test
  void render_imageOfAnUnknownCoding_isRefused() throws Exception {
    byte[] content;
    try (PDDocument document = new PDDocument()) {
      PDImageXObject image =
          new PDImageXObject(
              document,
              new java.io.ByteArrayInputStream(new byte[] {1, 2, 3}),
              COSName.JPX_DECODE,
              100,
              100,
              8,
              PDDeviceRGB.INSTANCE);
      PdfSamples.addPage(document, PDRectangle.A4, 0, page -> page.drawImage(image, 0, 0));
      content = PdfSamples.bytes(document);
    }
    try (PdfPages pages = open(content)) {
      assertThatThrownBy(() -> pages.render(1, new Box(0, 0, 100, 100), 1, Finish.QUICK))
          .isInstanceOf(PictureException.class)
          .hasMessageContaining("JPEG 2000")
          .hasMessageContaining("save the page as an image");
    }
  }

  @Test
  void theCodingOfMostBilevelScans_canBeRead() {
    assertThat(ImageIO.getImageReadersByFormatName("JBIG2").hasNext()).isTrue();
  }

  private PdfPages open(byte[] content) throws IOException, PictureException {
    return PdfPages.open(PictureSamples.file(folder, "page.pdf", content));
  }

  private void refused(byte[] content, PictureException.Kind kind, String part) {
    assertThatThrownBy(() -> open(content).close())
        .isInstanceOfSatisfying(
            PictureException.class,
            refusal -> {
              assertThat(refusal.kind()).isEqualTo(kind);
              assertThat(refusal.getMessage()).contains("page.pdf", part).doesNotContain("\n");
            });
  }

  private static double share(BufferedImage image, int rgb) {
    int count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        count += (image.getRGB(x, y) & 0xFFFFFF) == rgb ? 1 : 0;
      }
    }
    return (double) count / (image.getWidth() * image.getHeight());
  }

  /** Mean darkness, 0 to 1. */
  private static double ink(BufferedImage image) {
    double sum = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        sum += 255 - (image.getRGB(x, y) & 0xFF);
      }
    }
    return sum / 255 / image.getWidth() / image.getHeight();
  }
}
