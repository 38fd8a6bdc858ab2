package org.relegend.scan;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.rendering.RenderDestination;
import org.relegend.map.Box;

/**
 * The pages of a PDF, numbered from 1. Only one thread at a time may use it: that is a rule of the
 * library beneath.
 */
public final class PdfPages implements AutoCloseable {
  /** What a page looks like when rendered. */
  public enum Finish {
    /** Quick: pixels of scanned images are picked, so that thin lines may break up. */
    QUICK,
    /** Pixels of scanned images are averaged. */
    SMOOTH
  }

  /**
   * A page as displayed: its visible box, turned as the file says.
   *
   * @param width in points (1/72 inch)
   * @param height in points
   */
  public record Size(double width, double height) {}

  /** Pixels rendered at once when images are averaged. */
  private static final int STRIP_PIXELS = 4 << 20;

  private static final int MOST_AVERAGED = 8;
  private static final int MAX_PIXELS = 64 << 20;

  private static final double BYTES_PER_PIXEL = 4;

  /** Share of the memory that the images of a page may take to be kept. */
  private static final double MOST_KEPT = 0.25;

  private final Path path;
  private final PDDocument document;
  private final PageRenderer renderer;
  private final Map<Integer, Double> resolutions = new HashMap<>();

  private PdfPages(Path path, PDDocument document) {
    this.path = path;
    this.document = document;
    this.renderer = new PageRenderer(document);
  }

  /**
   * Opens a PDF.
   *
   * @throws PictureException where it is no PDF, damaged, without pages or asks for a password
   */
  public static PdfPages open(Path path) throws PictureException {
    PictureFormat format = PictureFormat.of(path);
    if (format != PictureFormat.PDF) {
      throw new PictureException(
          PictureException.Kind.UNKNOWN_FORMAT, path, "this is no PDF but a picture: " + format);
    }
    try {
      return withPages(path, Loader.loadPDF(path.toFile()));
    } catch (InvalidPasswordException locked) {
      throw new PictureException(
          PictureException.Kind.LOCKED,
          path,
          "the PDF asks for a password; save a copy without one first",
          locked);
    } catch (IOException | RuntimeException | StackOverflowError problem) {
      throw damaged(path, problem);
    }
  }

  private static PdfPages withPages(Path path, PDDocument document) throws IOException {
    try {
      if (document.getNumberOfPages() < 1) {
        throw new IOException("it has no pages");
      }
      return new PdfPages(path, document);
    } catch (IOException | RuntimeException problem) {
      document.close();
      throw problem;
    }
  }

  public int count() {
    return document.getNumberOfPages();
  }

  /**
   * The size of a page.
   *
   * @param page from 1
   * @throws PictureException where there is no such page
   */
  public Size size(int page) throws PictureException {
    checkPage(page);
    PDRectangle box = document.getPage(page - 1).getCropBox();
    boolean turned = document.getPage(page - 1).getRotation() % 180 != 0;
    double width = turned ? box.getHeight() : box.getWidth();
    double height = turned ? box.getWidth() : box.getHeight();
    if (!(width > 0 && height > 0)) {
      throw damaged(path, new IOException("page %d has no size".formatted(page)));
    }
    return new Size(rounded(width), rounded(height));
  }

  /** To a thousandth of a point: what is beyond it comes of single precision and means nothing. */
  private static double rounded(double points) {
    return Math.max(0.001, Math.round(points * 1000) / 1000.0);
  }

  /**
   * The words of a page's own text, in the order of the file; none for a scan.
   *
   * @param page from 1
   * @throws PictureException where the page can't be read
   */
  public List<PageWord> words(int page) throws PictureException {
    checkPage(page);
    try {
      return PageWords.of(document, page);
    } catch (IOException | RuntimeException | StackOverflowError problem) {
      throw damaged(path, problem);
    }
  }

  /**
   * Renders a part of a page, on white.
   *
   * @param page from 1
   * @param region in points as displayed, y downwards; may reach beyond the page
   * @param scale pixels per point
   * @throws PictureException where the page can't be rendered
   */
  public BufferedImage render(int page, Box region, double scale, Finish finish)
      throws PictureException {
    checkPage(page);
    long width = Math.max(1, Math.round(region.width() * scale));
    long height = Math.max(1, Math.round(region.height() * scale));
    if (width * height > MAX_PIXELS) {
      throw new IllegalArgumentException("%d x %d pixels at once".formatted(width, height));
    }
    BufferedImage image = new BufferedImage((int) width, (int) height, BufferedImage.TYPE_INT_RGB);
    int times = finish == Finish.SMOOTH ? averaged(page, scale) : 1;
    int rows =
        times == 1 ? (int) height : Math.max(1, (int) (STRIP_PIXELS / (width * times * times)));
    for (int top = 0; top < height; top += rows) {
      int high = (int) Math.min(rows, height - top);
      BufferedImage fine = times == 1 ? image : strip((int) width * times, high * times);
      paint(page, fine, region.left(), region.top() + top / scale, scale * times);
      if (times > 1) {
        BlockMean.reduce(fine, times, image, top);
      }
    }
    return image;
  }

  /** Whether {@link Finish#SMOOTH} gives anything better than {@link Finish#QUICK}. */
  public boolean hasFinerFinish(int page, double scale) throws PictureException {
    checkPage(page);
    return averaged(page, scale) > 1;
  }

  private int averaged(int page, double scale) throws PictureException {
    double finest = imageResolution(page);
    int times = 1;
    while (times < MOST_AVERAGED && scale * times < finest * 0.75) {
      times *= 2;
    }
    return times;
  }

  /** Pixels per point of the finest image on a page, were it as wide as the page; 0 for none. */
  private double imageResolution(int page) throws PictureException {
    Double known = resolutions.get(page);
    if (known == null) {
      double width = size(page).width();
      known = PageImages.widest(document.getPage(page - 1)) / width;
      resolutions.put(page, known);
    }
    return known;
  }

  /**
   * Whether a page's images are to be decoded whole, and kept while there is memory: where each
   * pixel of theirs is seen, so that the next region of a scan needn't decode all of it again. Seen
   * from afar they are decoded coarsely, which isn't kept.
   */
  private boolean isDecodedWhole(int page, double scale) throws PictureException {
    double resolution = imageResolution(page);
    Size size = size(page);
    double bytes = BYTES_PER_PIXEL * resolution * size.width() * resolution * size.height();
    return scale > resolution / 2 && bytes < MOST_KEPT * Runtime.getRuntime().maxMemory();
  }

  private static BufferedImage strip(int width, int height) {
    return new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
  }

  private void paint(int page, BufferedImage image, double left, double top, double scale)
      throws PictureException {
    Graphics2D g = image.createGraphics();
    try {
      g.setBackground(Color.WHITE); // the renderer clears the page with it
      g.clearRect(0, 0, image.getWidth(), image.getHeight());
      g.setClip(0, 0, image.getWidth(), image.getHeight());
      g.translate(-left * scale, -top * scale);
      renderer.setSubsamplingAllowed(!isDecodedWhole(page, scale));
      renderer.begin();
      renderer.renderPageToGraphics(
          page - 1, g, (float) scale, (float) scale, RenderDestination.VIEW);
      if (renderer.unreadable() != null) {
        throw new IOException(renderer.unreadable());
      }
    } catch (IOException | RuntimeException | StackOverflowError problem) {
      throw unrendered(page, problem);
    } catch (OutOfMemoryError tooLarge) {
      throw new PictureException(
          PictureException.Kind.TOO_LARGE,
          path,
          "page %d needs more memory than there is; save its scan with fewer pixels"
              .formatted(page),
          tooLarge);
    } finally {
      g.dispose();
    }
  }

  PDDocument document() {
    return document;
  }

  Path path() {
    return path;
  }

  void checkPage(int page) throws PictureException {
    if (page < 1 || page > count()) {
      throw new PictureException(
          PictureException.Kind.NO_SUCH_PAGE,
          path,
          "there is no page %d: the pages are 1 to %d".formatted(page, count()));
    }
  }

  private PictureException unrendered(int page, Throwable problem) {
    return new PictureException(
        PictureException.Kind.DAMAGED,
        path,
        "page %d can't be shown (%s); save the page as an image and add that"
            .formatted(page, reason(problem)),
        problem);
  }

  private static PictureException damaged(Path path, Throwable problem) {
    return new PictureException(
        PictureException.Kind.DAMAGED,
        path,
        "the PDF is damaged or cut off (%s); copy it again from where it came from"
            .formatted(reason(problem)),
        problem);
  }

  private static String reason(Throwable problem) {
    return problem.getMessage() == null ? problem.getClass().getSimpleName() : problem.getMessage();
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
