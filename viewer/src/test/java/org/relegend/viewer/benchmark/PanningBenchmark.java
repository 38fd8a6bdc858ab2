package org.relegend.viewer.benchmark;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.relegend.scan.PictureSamples;
import org.relegend.viewer.paint.MarkOverlay;
import org.relegend.viewer.paint.MarkSamples;
import org.relegend.viewer.tile.MemorySource;
import org.relegend.viewer.ui.PictureCanvas;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

/**
 * Frames while panning over a picture with 10,000 placements, against a plain copy of an image of
 * the viewport's size; the two take turns. Aims: twice the copy's time, and 99 of 100 frames below
 * 16.7 ms. Run it like {@link OpeningBenchmark}.
 */
public final class PanningBenchmark {
  private static final int WIDTH = 1600;
  private static final int HEIGHT = 1000;
  private static final int FRAMES = 1500;
  private static final int WARM_UP = 500;
  private static final int PLACEMENTS = 10_000;

  private PanningBenchmark() {}

  /** Prints medians, the ratio and the 99th percentile. */
  public static void main(String[] args) throws Exception {
    javax.swing.SwingUtilities.invokeAndWait(PanningBenchmark::measure);
    System.exit(0);
  }

  private static void measure() {
    PictureCanvas canvas = new PictureCanvas();
    canvas.setSize(WIDTH, HEIGHT);
    canvas.show(new MemorySource(PictureSamples.discs(4000, 3000, 1)), Orientation.UPRIGHT);
    canvas.setOverlays(List.of(new MarkOverlay(MarkSamples.spread(PLACEMENTS, 4000, 3000, 1))));
    canvas.dispatchEvent(
        new java.awt.event.ComponentEvent(canvas, java.awt.event.ComponentEvent.COMPONENT_RESIZED));
    ScreenPoint middle = new ScreenPoint(WIDTH / 2.0, HEIGHT / 2.0);
    canvas.setView(canvas.view().orElseThrow().zoomedBy(2, middle));
    BufferedImage screen = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    BufferedImage plain = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    double[] ours = new double[FRAMES];
    double[] copies = new double[FRAMES];
    for (int frame = -WARM_UP; frame < FRAMES; frame++) {
      ViewState view = canvas.view().orElseThrow();
      int step = Math.floorMod(frame, 200) < 100 ? 5 : -5;
      long start = System.nanoTime();
      canvas.setView(view.pannedBy(step, Integer.signum(step) * 2));
      Graphics2D g = screen.createGraphics();
      canvas.paint(g);
      g.dispose();
      long between = System.nanoTime();
      Graphics2D copy = screen.createGraphics();
      copy.drawImage(plain, 0, 0, null);
      copy.dispose();
      long end = System.nanoTime();
      if (frame >= 0) {
        ours[frame] = (between - start) / 1e6;
        copies[frame] = (end - between) / 1e6;
      }
    }
    double mean = Arrays.stream(ours).average().orElseThrow();
    double copyMean = Arrays.stream(copies).average().orElseThrow();
    Arrays.sort(ours);
    Arrays.sort(copies);
    System.out.printf(
        Locale.ROOT,
        "frame %.2f ms, plain copy %.2f ms, ratio %.2f; means %.2f and %.2f ms, ratio %.2f;"
            + " 99 %% of frames below %.1f ms%n",
        ours[FRAMES / 2],
        copies[FRAMES / 2],
        ours[FRAMES / 2] / copies[FRAMES / 2],
        mean,
        copyMean,
        mean / copyMean,
        ours[FRAMES * 99 / 100]);
  }
}
