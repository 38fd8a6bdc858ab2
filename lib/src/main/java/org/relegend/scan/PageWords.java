package org.relegend.scan;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Box;

/**
 * Collects the words of a page by where their letters stand, so that a name that the file writes in
 * pieces is one word all the same.
 */
final class PageWords extends PDFTextStripper {
  /** More words than any schematic has; a page with more is cut there. */
  static final int MOST = 200_000;

  private final List<PageWord> words = new ArrayList<>();
  private @Nullable PageWord open;

  private PageWords() {}

  /** The words of a page, counted from 1, in the order of the file. */
  static List<PageWord> of(PDDocument document, int page) throws IOException {
    PageWords collector = new PageWords();
    collector.setStartPage(page);
    collector.setEndPage(page);
    collector.writeText(document, Writer.nullWriter());
    collector.close();
    return List.copyOf(collector.words);
  }

  @Override
  protected void processTextPosition(TextPosition letter) {
    String text = letter.getUnicode();
    if (text == null || text.isBlank() || words.size() >= MOST) {
      close();
      return;
    }
    PageWord next = word(letter, text.strip());
    PageWord before = open;
    if (before != null && before.runsInto(next)) {
      open = before.joined(next);
    } else {
      close();
      open = next;
    }
  }

  private void close() {
    if (open != null) {
      words.add(open);
      open = null;
    }
  }

  private PageWord word(TextPosition letter, String text) {
    double x = letter.getX();
    double y = letter.getY();
    double along = letter.getWidthDirAdj();
    double up = letter.getHeightDir();
    // the letter knows its direction before the page is turned, its place after
    int turned = getCurrentPage().getRotation();
    int direction = Math.floorMod(Math.round(letter.getDir() / 90f) * 90 - turned, 360);
    Box box =
        switch (direction) {
          case 90 -> new Box(x - up, y - along, x, y);
          case 180 -> new Box(x - along, y, x, y + up);
          case 270 -> new Box(x, y, x + up, y + along);
          default -> new Box(x, y - up, x + along, y);
        };
    return new PageWord(text, box, direction, letter.getFontSizeInPt());
  }
}
