package org.relegend.viewer.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.HazardZone;
import org.relegend.map.Point;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

class HazardOverlayTest {
  private static final HazardZone ZONE =
      MarkSamples.zone(
          "supply",
          HazardZone.Kind.MAINS,
          new Point(100, 100),
          new Point(900, 150),
          new Point(850, 700),
          new Point(150, 650));

  private final HazardOverlay overlay = new HazardOverlay(List.of(ZONE));

  /** However far one zooms in or out, and wherever inside one looks, the warning can be seen. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  void insideAZone_aWarningIsAlwaysOnTheScreen(long seed) {
    Random random = new Random(seed);
    Orientation orientation =
        new Orientation(random.nextInt(4), random.nextBoolean(), 8 * random.nextDouble());
    ViewState view =
        ViewState.fit(1000, 800, 500, 400, orientation)
            .centredOn(
                new Point(200 + 600 * random.nextDouble(), 200 + 400 * random.nextDouble()),
                Math.exp(5 * random.nextDouble() - 2));

    BufferedImage screen = MarkOverlayTest.painted(overlay, view);

    assertThat(count(screen, Palette.WARNING_YELLOW)).isGreaterThan(60);
    assertThat(count(screen, Palette.WARNING_BLACK)).isGreaterThan(60);
  }

  @Test
  void band_followsTheOutlineInBothColours() {
    ViewState view = ViewState.fit(1000, 800, 1000, 800, Orientation.UPRIGHT);
    BufferedImage screen = MarkOverlayTest.painted(overlay, view);
    int yellow = 0;
    int black = 0;
    int other = 0;
    for (int i = 20; i < 480; i++) {
      double share = i / 500.0;
      ScreenPoint at = view.toScreen(new Point(100 + 800 * share, 100 + 50 * share));
      int rgb = screen.getRGB((int) at.x(), (int) at.y());
      if (rgb == Palette.WARNING_YELLOW.getRGB()) {
        yellow++;
      } else if (rgb == Palette.WARNING_BLACK.getRGB()) {
        black++;
      } else {
        other++;
      }
    }
    assertThat(yellow).isGreaterThan(150);
    assertThat(black).isGreaterThan(150);
    assertThat(other).isLessThan(46);
  }

  /** ISO 3864-1: yellow covers at least half of a warning sign. */
  @ParameterizedTest(name = "{0}")
  @EnumSource(HazardZone.Kind.class)
  void sign_isAtLeastHalfYellow(HazardZone.Kind kind) {
    BufferedImage screen = new BufferedImage(400, 400, BufferedImage.TYPE_INT_RGB);
    var g = screen.createGraphics();
    g.setColor(Color.BLUE);
    g.fillRect(0, 0, 400, 400);
    HazardSign.draw(g, kind, 200, 220, 300);
    g.dispose();
    int yellow = count(screen, Palette.WARNING_YELLOW);
    int black = count(screen, Palette.WARNING_BLACK);

    assertThat(yellow / (double) (yellow + black)).isGreaterThan(0.5);
    assertThat(black).isGreaterThan(1000);
    // an upright triangle with equal sides: wide below, narrow above
    assertThat(yellowIn(screen, 110)).isLessThan(yellowIn(screen, 280));
    double height = 300 * Math.sqrt(3) / 2;
    assertThat((yellow + black) / (height * 150)).isCloseTo(1.3, within(0.3));
  }

  @Test
  void at_tellsTheZonesAroundAPoint() {
    assertThat(overlay.at(new Point(500, 400))).containsExactly(ZONE);
    assertThat(overlay.at(new Point(50, 50))).isEmpty();
  }

  @Test
  void words_areTheUsers() {
    ViewState view = ViewState.fit(1000, 800, 1000, 800, Orientation.UPRIGHT);
    BufferedImage one = MarkOverlayTest.painted(overlay, view);
    BufferedImage other =
        MarkOverlayTest.painted(new HazardOverlay(List.of(ZONE), kind -> "NETZ"), view);

    assertThat(MarkOverlayTest.pixels(one)).isNotEqualTo(MarkOverlayTest.pixels(other));
  }

  private static int yellowIn(BufferedImage screen, int row) {
    return count(screen.getSubimage(0, row, screen.getWidth(), 1), Palette.WARNING_YELLOW);
  }

  private static int count(BufferedImage screen, Color colour) {
    int count = 0;
    for (int y = 0; y < screen.getHeight(); y++) {
      for (int x = 0; x < screen.getWidth(); x++) {
        count += screen.getRGB(x, y) == colour.getRGB() ? 1 : 0;
      }
    }
    return count;
  }
}
