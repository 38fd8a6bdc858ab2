package org.relegend.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The one typeface of the sheets, embedded so that they look alike everywhere. It is the one that
 * PDFBox brings: it has Greek, Cyrillic and the signs of units. A character it lacks is printed as
 * its code point, [U+4E2D], never left out.
 */
final class Typeface {
  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private final PDFont font;
  private final Map<Integer, String> printable = new HashMap<>();

  private Typeface(PDFont font) {
    this.font = font;
  }

  static Typeface embeddedIn(PDDocument document) throws IOException {
    try (InputStream in = PDDocument.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException("PDFBox's own typeface is missing: " + FILE);
      }
      return new Typeface(PDType0Font.load(document, in, true));
    }
  }

  PDFont font() {
    return font;
  }

  /** The text in characters of this face: composed, control characters as spaces. */
  String printable(String text) {
    StringBuilder out = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .forEach(c -> out.append(printable.computeIfAbsent(c, this::printed)));
    return out.toString();
  }

  private String printed(int c) {
    if (Character.isISOControl(c) || Character.isWhitespace(c)) {
      return " ";
    }
    String text = Character.toString(c);
    try {
      font.encode(text);
      return text;
    } catch (IllegalArgumentException lacking) {
      return "[U+%04X]".formatted(c);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Width of printable text in points. */
  double width(String printable, double size) {
    try {
      return font.getStringWidth(printable) / 1000 * size;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The text in lines of no more than this width; words that are longer are cut. At least one. */
  List<String> wrapped(String text, double size, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : printable(text).strip().split(" +")) {
      String rest = word;
      if (!line.isEmpty() && width(line + " " + rest, size) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (width(rest, size) > width && rest.length() > 1) {
        int fits = fitting(rest, size, width);
        lines.add(rest.substring(0, fits));
        rest = rest.substring(fits);
      }
      line.append(line.isEmpty() ? "" : " ").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  /** The text in one line of no more than this width, cut off with an ellipsis if need be. */
  String shortened(String text, double size, double width) {
    String whole = printable(text);
    if (width(whole, size) <= width) {
      return whole;
    }
    return whole.substring(0, fitting(whole, size, width - width("…", size))) + "…";
  }

  private int fitting(String text, double size, double width) {
    int fits = text.offsetByCodePoints(0, 1);
    while (fits < text.length()) {
      int next = text.offsetByCodePoints(fits, 1);
      if (width(text.substring(0, next), size) > width) {
        break;
      }
      fits = next;
    }
    return fits;
  }
}
