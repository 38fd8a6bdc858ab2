package org.relegend.viewer.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
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

  private static BufferedImage painted(LabelOverlay overlay) {
    BufferedImage image = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(GROUND);
    g.fillRect(0, 0, 400, 300);
    overlay.paint(g, VIEW);
    g.dispose();
    return image;
  }

  /** Pixels of a box that labels cover. */
  private static int covered(BufferedImage image, Rectangle2D box) {
    int covered = 0;
    for (int y = (int) box.getMinY(); y < box.getMaxY(); y++) {
      for (int x = (int) box.getMinX(); x < box.getMaxX(); x++) {
        covered += (image.getRGB(x, y) & 0xFFFFFF) == (GROUND.getRGB() & 0xFFFFFF) ? 0 : 1;
      }
    }
    return covered;
  }

  private static int covered(LabelOverlay.Label... labels) {
    return covered(
        painted(new LabelOverlay(List.of(labels))), new Rectangle2D.Double(0, 0, 400, 300));
  }

  @Test
  void labelsOfPlacesCloseBy_hideNothingOfEachOther() {
    int one = covered(label(200, 150, "5.34 V"));
    int other = covered(label(210, 150, "-4.7 mV"));
    assertThat(one).isPositive();
    assertThat(covered(label(200, 150, "5.34 V"), label(210, 150, "-4.7 mV")))
        .isEqualTo(one + other);
    // the third is tied to its place by a line besides
    assertThat(
            covered(
                label(200, 150, "5.34 V"), label(210, 150, "-4.7 mV"), label(205, 152, "replaced")))
        .isGreaterThanOrEqualTo(one + other + covered(label(205, 152, "replaced")));
  }

  @Test
  void whatOthersWrote_staysFree() {
    Rectangle2D written = new Rectangle2D.Double(150, 100, 100, 45);
    LabelOverlay overlay =
        new LabelOverlay(List.of(label(200, 150, "5.34 V")))
            .keepingOff((g, view) -> List.of(written));
    BufferedImage image = painted(overlay);
    assertThat(covered(image, written)).isZero();
    assertThat(covered(image, new Rectangle2D.Double(0, 0, 400, 300))).isGreaterThan(100);
  }

  @Test
  void whereThereIsNoRoom_aDotTellsThatThereIsMore() {
    LabelOverlay overlay =
        new LabelOverlay(List.of(label(200, 150, "5.34 V")))
            .keepingOff((g, view) -> List.of(new Rectangle2D.Double(0, 0, 400, 300)));
    assertThat(covered(painted(overlay), new Rectangle2D.Double(0, 0, 400, 300))).isEqualTo(16);
  }
}
