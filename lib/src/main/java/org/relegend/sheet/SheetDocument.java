package org.relegend.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * A document in the making: its pages, what runs above and below each, and the finished bytes,
 * which are the same for the same content, since nothing of clock or machine goes into them.
 */
final class SheetDocument implements AutoCloseable {
  /** What marks a document as one of ours. */
  static final String PRODUCER = "Relegend";

  /** Room for the line above the content and the one below, in points. */
  private static final double RUNNING = 18;

  private static final double SMALL = 7.5;

  private final PDDocument document = new PDDocument();
  private final PaperSize paper;
  private final Typeface face;
  private final List<SheetPage> leaves = new ArrayList<>();

  SheetDocument(PaperSize paper) throws IOException {
    this.paper = paper;
    this.face = Typeface.embeddedIn(document);
  }

  PDDocument document() {
    return document;
  }

  Typeface face() {
    return face;
  }

  SheetPage newLeaf() {
    try {
      PDPage page = new PDPage(paper.box());
      document.addPage(page);
      SheetPage leaf = new SheetPage(document, page, face);
      leaves.add(leaf);
      return leaf;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  int pages() {
    return leaves.size();
  }

  double left() {
    return PaperSize.MARGIN;
  }

  double right() {
    return paper.width() - PaperSize.MARGIN;
  }

  double top() {
    return PaperSize.MARGIN + RUNNING;
  }

  double bottom() {
    return paper.height() - PaperSize.MARGIN - RUNNING;
  }

  double width() {
    return right() - left();
  }

  /**
   * Finishes the pages.
   *
   * @param above runs above every page, left and right
   * @param below runs below every page, left of its number
   */
  byte[] finish(String title, List<String> above, String below, Instant printed)
      throws IOException {
    for (int i = 0; i < leaves.size(); i++) {
      SheetPage leaf = leaves.get(i);
      double half = width() / 2 - 6;
      leaf.text(
          face.shortened(above.get(0), SMALL, half), left(), PaperSize.MARGIN + 7, SMALL, true);
      leaf.textBefore(
          face.shortened(above.get(1), SMALL, half), right(), PaperSize.MARGIN + 7, SMALL);
      leaf.line(left(), PaperSize.MARGIN + 11, right(), PaperSize.MARGIN + 11, 0.5);
      double base = paper.height() - PaperSize.MARGIN - 2;
      leaf.line(left(), base - 10, right(), base - 10, 0.5);
      String number = "page %d of %d".formatted(i + 1, leaves.size());
      leaf.text(face.shortened(below, SMALL, width() - 70), left(), base, SMALL, false);
      leaf.textBefore(number, right(), base, SMALL);
      leaf.close();
    }
    PDDocumentInformation result = document.getDocumentInformation();
    result.setTitle(title);
    result.setProducer(PRODUCER);
    GregorianCalendar when = new GregorianCalendar(TimeZone.getTimeZone(ZoneOffset.UTC));
    when.setTimeInMillis(printed.toEpochMilli());
    result.setCreationDate(when);
    document.setDocumentId(printed.toEpochMilli()); // else the clock makes it
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out);
    return out.toByteArray();
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
