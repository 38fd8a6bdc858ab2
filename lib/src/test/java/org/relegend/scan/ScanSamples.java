package org.relegend.scan;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Random;
import org.relegend.map.Box;
import org.relegend.map.Point;

/** Another scan of a page: turned, scaled, cut off, on greyish paper, with noise; exactly known. */
public final class ScanSamples {
  private static final int PAPER = 0xECE8DC;

  /** Renderers draw thin lines through the middle of pixels, half a pixel from where they are. */
  private static final double HALF = 0.5;

  private final BufferedImage page;
  private final double fine;
  private final boolean drawn;

  /** A scan and where it shows the page's points. */
  public record Scan(BufferedImage image, AffineTransform fromPage) {
    /** Where the scan shows a point of the page. */
    public Point place(Point onPage) {
      double[] at = {onPage.x(), onPage.y()};
      fromPage.transform(at, 0, at, 0, 1);
      return new Point(at[0], at[1]);
    }

    public boolean shows(Point onPage) {
      Point at = place(onPage);
      return at.x() > 0 && at.y() > 0 && at.x() < image.getWidth() && at.y() < image.getHeight();
    }
  }

  private ScanSamples(BufferedImage page, double fine, boolean drawn) {
    this.page = page;
    this.fine = fine;
    this.drawn = drawn;
  }

  /**
   * A page of a PDF.
   *
   * @param fine whole pixels a point it is rendered at
   * @param drawn whether it is drawn in lines, rather than an image
   */
  public static ScanSamples of(Path pdf, int number, int fine, boolean drawn) throws Exception {
    try (PdfPages pages = PdfPages.open(pdf)) {
      PdfPages.Size size = pages.size(number);
      Box all = new Box(0, 0, size.width(), size.height());
      return new ScanSamples(pages.render(number, all, fine, PdfPages.Finish.SMOOTH), fine, drawn);
    }
  }

  /**
   * A scan of it.
   *
   * @param degrees turned clockwise
   * @param size against the rendered page
   * @param left share of the width that is cut off at the left of the scan
   * @param top share of the height that is cut off at its top
   * @param noise standard deviation, in grey levels
   */
  public Scan scan(double degrees, double size, double left, double top, double noise, long seed) {
    boolean lying = Math.abs(Math.sin(Math.toRadians(degrees))) > 0.7;
    double wide = size * (lying ? page.getHeight() : page.getWidth());
    double high = size * (lying ? page.getWidth() : page.getHeight());
    AffineTransform at = new AffineTransform();
    at.translate(wide / 2 - left * wide, high / 2 - top * high);
    at.rotate(Math.toRadians(degrees));
    at.scale(size, size);
    at.translate(-page.getWidth() / 2.0, -page.getHeight() / 2.0);
    BufferedImage scan =
        new BufferedImage(
            (int) (wide * (1 - left)), (int) (high * (1 - top)), BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D g = scan.createGraphics();
    g.setColor(new java.awt.Color(PAPER));
    g.fillRect(0, 0, scan.getWidth(), scan.getHeight());
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(page, at, null);
    g.dispose();
    spoil(scan, noise, new Random(seed));
    if (drawn) {
      at.translate(HALF, HALF);
    }
    at.scale(fine, fine);
    return new Scan(scan, at);
  }

  private static void spoil(BufferedImage scan, double noise, Random random) {
    for (int y = 0; y < scan.getHeight(); y++) {
      for (int x = 0; x < scan.getWidth(); x++) {
        int rgb = scan.getRGB(x, y);
        int by = (int) Math.rint(noise * random.nextGaussian());
        scan.setRGB(x, y, moved(rgb >> 16, by) << 16 | moved(rgb >> 8, by) << 8 | moved(rgb, by));
      }
    }
  }

  private static int moved(int value, int by) {
    return Math.max(0, Math.min(255, (value & 255) + by));
  }
}
