package org.relegend.scan;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.filter.MissingImageReaderException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.rendering.PageDrawer;
import org.apache.pdfbox.rendering.PageDrawerParameters;
import org.jspecify.annotations.Nullable;

/** A renderer that tells of images it had to leave out, which the library only logs. */
final class PageRenderer extends PDFRenderer {
  private @Nullable String unreadable;

  PageRenderer(PDDocument document) {
    super(document);
  }

  void begin() {
    unreadable = null;
  }

  /** What could not be drawn since the beginning. */
  @Nullable String unreadable() {
    return unreadable;
  }

  @Override
  protected PageDrawer createPageDrawer(PageDrawerParameters parameters) throws IOException {
    return new PageDrawer(parameters) {
      @Override
      protected void operatorException(
          Operator operator, List<COSBase> operands, IOException problem) throws IOException {
        if (problem instanceof MissingImageReaderException) {
          unreadable = "it holds an image of a kind that can't be read here, " + kind(problem);
        }
        super.operatorException(operator, operands, problem);
      }
    };
  }

  private static String kind(IOException problem) {
    return String.valueOf(problem.getMessage()).contains("JPEG2000") ? "JPEG 2000" : "JBIG2";
  }
}
