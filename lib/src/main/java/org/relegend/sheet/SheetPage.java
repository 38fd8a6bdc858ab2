package org.relegend.sheet;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/**
 * One page in the making. Places are points (1/72 inch) from the upper left corner of the paper, y
 * downwards. Nothing is written to a file here, so a failure to write can only be a fault of ours.
 */
final class SheetPage {
  /** How much thicker strokes of bold letters are, as a part of the size. */
  private static final double BOLDNESS = 0.028;

  private final PDPageContentStream out;
  private final Typeface face;
  private final double height;

  SheetPage(PDDocument document, PDPage page, Typeface face) throws IOException {
    this.out = new PDPageContentStream(document, page);
    this.face = face;
    this.height = page.getMediaBox().getHeight();
  }

  /** One step of drawing. */
  private interface Stroke {
    void make(PDPageContentStream out) throws IOException;
  }

  private void put(Stroke stroke) {
    try {
      stroke.make(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Typeface face() {
    return face;
  }

  /** Writes text in black, its baseline at y. */
  void text(String text, double x, double y, double size, boolean bold) {
    String printable = face.printable(text);
    if (printable.isBlank()) {
      return;
    }
    put(
        to -> {
          to.setNonStrokingColor(Color.BLACK);
          to.setStrokingColor(Color.BLACK);
          to.beginText();
          to.setFont(face.font(), (float) size);
          to.setRenderingMode(bold ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
          if (bold) {
            to.setLineWidth((float) (size * BOLDNESS));
            to.setLineDashPattern(new float[0], 0);
          }
          to.newLineAtOffset((float) x, (float) (height - y));
          to.showText(printable);
          to.endText();
        });
  }

  /** Writes text that ends at x. */
  void textBefore(String text, double x, double y, double size) {
    text(text, x - face.width(face.printable(text), size), y, size, false);
  }

  void line(double x1, double y1, double x2, double y2, double width) {
    stroke(new java.awt.geom.Line2D.Double(x1, y1, x2, y2), width, Color.BLACK);
  }

  /** An empty box. */
  void box(double x, double y, double width, double height, double line) {
    stroke(new Rectangle2D.Double(x, y, width, height), line, Color.BLACK);
  }

  void stroke(Shape shape, double width, Color colour, float... dash) {
    put(
        to -> {
          to.setStrokingColor(colour);
          to.setLineWidth((float) width);
          to.setLineJoinStyle(1);
          to.setLineDashPattern(dash, 0);
          trace(shape);
          to.stroke();
        });
  }

  void fill(Shape shape, Color colour) {
    put(
        to -> {
          to.setNonStrokingColor(colour);
          trace(shape);
          to.fill();
        });
  }

  private void trace(Shape shape) throws IOException {
    float[] at = new float[6];
    for (PathIterator path = shape.getPathIterator(null); !path.isDone(); path.next()) {
      switch (path.currentSegment(at)) {
        case PathIterator.SEG_MOVETO -> out.moveTo(at[0], up(at[1]));
        case PathIterator.SEG_LINETO -> out.lineTo(at[0], up(at[1]));
        case PathIterator.SEG_CUBICTO ->
            out.curveTo(at[0], up(at[1]), at[2], up(at[3]), at[4], up(at[5]));
        case PathIterator.SEG_CLOSE -> out.closePath();
        default -> throw new IllegalArgumentException("a shape with curves of second order");
      }
    }
  }

  private float up(float y) {
    return (float) height - y;
  }

  void image(PDImageXObject image, Rectangle2D frame) {
    put(
        to ->
            to.drawImage(
                image,
                (float) frame.getX(),
                (float) (height - frame.getMaxY()),
                (float) frame.getWidth(),
                (float) frame.getHeight()));
  }

  /** What the steps draw shows only inside of a frame. */
  void clipped(Rectangle2D frame, Runnable steps) {
    put(
        to -> {
          to.saveGraphicsState();
          trace(frame);
          to.clip();
        });
    steps.run();
    put(PDPageContentStream::restoreGraphicsState);
  }

  void close() throws IOException {
    out.close();
  }
}
