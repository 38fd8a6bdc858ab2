package org.relegend.sheet;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** What is printed on, upright: A4 after ISO 216, Letter after ANSI Y14.1. */
public enum PaperSize {
  A4(210 / 25.4 * 72, 297 / 25.4 * 72),
  LETTER(8.5 * 72, 11 * 72);

  /** What stays white on all four sides, in points: 15 mm, which every printer can do. */
  public static final double MARGIN = 15 / 25.4 * 72;

  private final double width;
  private final double height;

  PaperSize(double width, double height) {
    this.width = width;
    this.height = height;
  }

  PDRectangle box() {
    return new PDRectangle((float) width, (float) height);
  }

  /** In points, 1/72 inch. */
  public double width() {
    return width;
  }

  public double height() {
    return height;
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Reads "a4" or "letter".
   *
   * @throws IllegalArgumentException where it is neither
   */
  public static PaperSize of(String word) {
    return Stream.of(values())
        .filter(paper -> paper.word().equals(word.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "\"%s\" is no paper known here: give one of %s"
                        .formatted(
                            word,
                            Stream.of(values())
                                .map(PaperSize::word)
                                .collect(Collectors.joining(", ")))));
  }
}
