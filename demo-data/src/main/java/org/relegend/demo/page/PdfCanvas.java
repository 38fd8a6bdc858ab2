package org.relegend.demo.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Draws on a PDF page; text stays text. */
final class PdfCanvas implements Canvas {
  private final PDPageContentStream out;
  private final PDFont font;
  private final double height;

  PdfCanvas(PDPageContentStream out, PDFont font, double height) throws IOException {
    this.out = out;
    this.font = font;
    this.height = height;
    out.setLineCapStyle(1);
    out.setLineJoinStyle(1);
  }

  @Override
  public void line(List<Dot> run, double width) {
    write(
        () -> {
          out.setLineWidth((float) width);
          path(run);
          out.stroke();
        });
  }

  @Override
  public void fill(List<Dot> outline) {
    write(
        () -> {
          path(outline);
          out.fill();
        });
  }

  @Override
  public void circle(Dot middle, double radius, double width) {
    write(
        () -> {
          out.setLineWidth((float) width);
          float x = (float) middle.x();
          float y = up(middle.y());
          float r = (float) radius;
          float k = (float) (0.5522847 * radius);
          out.moveTo(x + r, y);
          out.curveTo(x + r, y + k, x + k, y + r, x, y + r);
          out.curveTo(x - k, y + r, x - r, y + k, x - r, y);
          out.curveTo(x - r, y - k, x - k, y - r, x, y - r);
          out.curveTo(x + k, y - r, x + r, y - k, x + r, y);
          out.closeAndStroke();
        });
  }

  @Override
  public void text(String text, Dot at, double size, Align align) {
    write(
        () -> {
          double width = font.getStringWidth(text) / 1000 * size;
          double shift =
              switch (align) {
                case LEFT -> 0;
                case MIDDLE -> width / 2;
                case RIGHT -> width;
              };
          out.beginText();
          out.setFont(font, (float) size);
          out.newLineAtOffset((float) (at.x() - shift), up(at.y()));
          out.showText(text);
          out.endText();
        });
  }

  private void path(List<Dot> run) throws IOException {
    out.moveTo((float) run.get(0).x(), up(run.get(0).y()));
    for (Dot dot : run.subList(1, run.size())) {
      out.lineTo((float) dot.x(), up(dot.y()));
    }
  }

  private float up(double y) {
    return (float) (height - y);
  }

  private static void write(Step step) {
    try {
      step.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private interface Step {
    void run() throws IOException;
  }
}
