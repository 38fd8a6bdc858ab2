package org.relegend.viewer.benchmark;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.relegend.map.Box;
import org.relegend.scan.PdfPages;
import org.relegend.scan.PdfSamples;

/**
 * A window of 1600 x 1000 pixels, deep in a page that is one A3 scan of 600 dots per inch, against
 * PDFBox rendering the whole page at that resolution; the two take turns. Aim: 20 %. Run it like
 * {@link OpeningBenchmark}.
 */
public final class RegionBenchmark {
  private static final int DPI = 600;
  private static final int ROUNDS = 9;
  private static final double SCALE = DPI / 72.0;
  private static final double WIDE = 1600 / SCALE;
  private static final double HIGH = 1000 / SCALE;

  private RegionBenchmark() {}

  /** Prints the first time, medians and their ratio. */
  public static void main(String[] args) throws Exception {
    Path file = Files.createTempFile("scan", ".pdf");
    try {
      Files.write(file, PdfSamples.scannedA3(DPI));
      measure(file);
    } finally {
      Files.delete(file);
    }
  }

  private static void measure(Path file) throws Exception {
    double[] whole = new double[ROUNDS];
    double[] region = new double[ROUNDS];
    double first = 0;
    Random random = new Random(3);
    try (PDDocument document = Loader.loadPDF(file.toFile());
        PdfPages pages = PdfPages.open(file)) {
      PDFRenderer renderer = new PDFRenderer(document);
      for (int round = -2; round < ROUNDS; round++) {
        System.gc(); // what one leaves behind is not to be cleared away in the other's time
        long start = System.nanoTime();
        int width = renderer.renderImageWithDPI(0, DPI, ImageType.RGB).getWidth();
        long wholeTime = System.nanoTime() - start;
        System.gc();
        double left = random.nextDouble() * (pages.size(1).width() - WIDE);
        double top = random.nextDouble() * (pages.size(1).height() - HIGH);
        Box box = new Box(left, top, left + WIDE, top + HIGH);
        start = System.nanoTime();
        BufferedImage part = pages.render(1, box, SCALE, PdfPages.Finish.QUICK);
        long regionTime = System.nanoTime() - start;
        if (width < 9000 || part.getWidth() != 1600) {
          throw new IllegalStateException("another picture");
        }
        if (round == -2) {
          first = regionTime / 1e6;
        } else if (round >= 0) {
          whole[round] = wholeTime / 1e6;
          region[round] = regionTime / 1e6;
        }
      }
    }
    Arrays.sort(whole);
    Arrays.sort(region);
    System.out.printf(
        Locale.ROOT,
        "region %.0f ms (the very first %.0f ms), whole page %.0f ms, %.0f %%%n",
        region[ROUNDS / 2],
        first,
        whole[ROUNDS / 2],
        100 * region[ROUNDS / 2] / whole[ROUNDS / 2]);
  }
}
