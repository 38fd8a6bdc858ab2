package org.relegend.viewer.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.relegend.map.Point;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ViewState;

class LabelOverlayTest {
  private static final Color GROUND = new Color(0x123456);
  private static final ViewState VIEW =
      new ViewState(400, 300, 400, 300, 1, new Point(0, 0), Orientation.UPRIGHT);

  private static LabelOverlay.Label label(double x, double y, String text) {
    return new LabelOverlay.Label(new Point(x, y), text, Mark.Emphasis.SELECTED);
  }

  /** Pixels that labels cover. */
  private static int covered(LabelOverlay.Label... labels) {
    BufferedImage image = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(GROUND);
    g.fillRect(0, 0, 400, 300);
    new LabelOverlay(List.of(labels)).paint(g, VIEW);
    g.dispose();
    int covered = 0;
    for (int y = 0; y < 300; y++) {
      for (int x = 0; x < 400; x++) {
        covered += (image.getRGB(x, y) & 0xFFFFFF) == (GROUND.getRGB() & 0xFFFFFF) ? 0 : 1;
      }
    }
    return covered;
  }

  @Test
  void labelsOfPlacesCloseBy_hideNothingOfEachOther() {
    int one = covered(label(200, 150, "5.34 V"));
    int other = covered(label(210, 150, "-4.7 mV"));
    int third = covered(label(205, 152, "replaced"));
    assertThat(one).isPositive();
    assertThat(
            covered(
                label(200, 150, "5.34 V"), label(210, 150, "-4.7 mV"), label(205, 152, "replaced")))
        .isEqualTo(one + other + third);
  }
}
