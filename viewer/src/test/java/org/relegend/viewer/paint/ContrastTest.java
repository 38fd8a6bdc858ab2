package org.relegend.viewer.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Contrast by WCAG 2.2 (W3C Recommendation, 5 October 2023), definitions "contrast ratio" and
 * "relative luminance"; success criteria 1.4.3 (text: 4.5 : 1) and 1.4.11 (graphics: 3 : 1).
 */
class ContrastTest {
  private static final double TEXT = 4.5;
  private static final double GRAPHICS = 3;

  @Test
  void formula_givesTheRatiosOfTheRecommendation() {
    assertThat(ratio(Color.BLACK, Color.WHITE)).isCloseTo(21, within(1e-9));
    assertThat(ratio(Color.RED, Color.RED)).isEqualTo(1);
    // widely published example: #767676 is the lightest grey that passes as text on white
    assertThat(ratio(new Color(0x767676), Color.WHITE)).isBetween(4.5, 4.6);
    assertThat(ratio(new Color(0x777777), Color.WHITE)).isLessThan(4.5);
  }

  @Test
  void labels_passAsText() {
    assertThat(ratio(Palette.PLATE_TEXT, Palette.PLATE)).isGreaterThanOrEqualTo(TEXT);
  }

  /** Whatever the photo shows, one of the two edges of a mark stands out against it. */
  @Test
  void marksEdges_standOutOnEveryGround() {
    double least = Double.MAX_VALUE;
    for (int red = 0; red < 256; red += 5) {
      for (int green = 0; green < 256; green += 5) {
        for (int blue = 0; blue < 256; blue += 5) {
          Color ground = new Color(red, green, blue);
          least =
              Math.min(
                  least, Math.max(ratio(HaloStroke.DARK, ground), ratio(HaloStroke.LIGHT, ground)));
        }
      }
    }
    assertThat(least).isGreaterThanOrEqualTo(GRAPHICS).isGreaterThan(4.5);
  }

  @Test
  void coloursOfMarks_standOutAgainstTheirDarkEdge() {
    for (Mark.Emphasis emphasis : Mark.Emphasis.values()) {
      assertThat(ratio(MarkStyle.of(emphasis).colour(), HaloStroke.DARK))
          .as("%s", emphasis)
          .isGreaterThanOrEqualTo(GRAPHICS);
    }
    assertThat(ratio(Palette.REDDISH_PURPLE, HaloStroke.DARK)).isGreaterThanOrEqualTo(GRAPHICS);
  }

  @Test
  void warningColours_standOutAgainstEachOther_alsoInGrey() {
    assertThat(ratio(Palette.WARNING_YELLOW, Palette.WARNING_BLACK))
        .isGreaterThanOrEqualTo(GRAPHICS);
    assertThat(ratio(grey(Palette.WARNING_YELLOW), grey(Palette.WARNING_BLACK)))
        .isGreaterThanOrEqualTo(GRAPHICS);
  }

  /** M. Okabe and K. Ito, Color Universal Design, table of RGB values (2008), in their order. */
  @Test
  void palette_isTheTableOfOkabeAndIto() {
    Map<Color, List<Integer>> table =
        Map.of(
            Palette.BLACK, List.of(0, 0, 0),
            Palette.ORANGE, List.of(230, 159, 0),
            Palette.SKY_BLUE, List.of(86, 180, 233),
            Palette.BLUISH_GREEN, List.of(0, 158, 115),
            Palette.YELLOW, List.of(240, 228, 66),
            Palette.BLUE, List.of(0, 114, 178),
            Palette.VERMILLION, List.of(213, 94, 0),
            Palette.REDDISH_PURPLE, List.of(204, 121, 167));
    assertThat(table).hasSize(8);
    table.forEach(
        (colour, rgb) ->
            assertThat(List.of(colour.getRed(), colour.getGreen(), colour.getBlue()))
                .isEqualTo(rgb));
  }

  /** ISO 3864-4, safety colour yellow (RAL 1003) as sRGB: #F9A800. */
  @Test
  void warningYellow_isThatOfTheStandard() {
    assertThat(Palette.WARNING_YELLOW).isEqualTo(new Color(0xF9, 0xA8, 0x00));
  }

  private static Color grey(Color colour) {
    int value = (299 * colour.getRed() + 587 * colour.getGreen() + 114 * colour.getBlue()) / 1000;
    return new Color(value, value, value);
  }

  private static double ratio(Color one, Color other) {
    double a = luminance(one) + 0.05;
    double b = luminance(other) + 0.05;
    return Math.max(a, b) / Math.min(a, b);
  }

  private static double luminance(Color colour) {
    return 0.2126 * linear(colour.getRed())
        + 0.7152 * linear(colour.getGreen())
        + 0.0722 * linear(colour.getBlue());
  }

  private static double linear(int value) {
    double share = value / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
