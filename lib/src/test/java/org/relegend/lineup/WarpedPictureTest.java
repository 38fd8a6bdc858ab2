package org.relegend.lineup;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;

class WarpedPictureTest {
  /** Grey, with a red square whose corner is at 40, 20. */
  private static BufferedImage picture() {
    BufferedImage picture = new BufferedImage(100, 60, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = picture.createGraphics();
    g.setColor(Color.GRAY);
    g.fillRect(0, 0, 100, 60);
    g.setColor(Color.RED);
    g.fillRect(40, 20, 10, 10);
    g.dispose();
    return picture;
  }

  @Test
  void aMirroredPicture_liesAsSeenFromTheOtherSide() {
    Transform mirror = new Transform(-1, 0, 100, 0, 1, 0, 0, 0, 1);
    BufferedImage warped = WarpedPicture.of(picture(), 100, 60, LineUp.exact(mirror));
    assertThat(warped.getRGB(50, 20)).isEqualTo(Color.RED.getRGB());
    assertThat(warped.getRGB(59, 29)).isEqualTo(Color.RED.getRGB());
    assertThat(warped.getRGB(60, 20)).isEqualTo(Color.GRAY.getRGB());
    assertThat(warped.getRGB(49, 20)).isEqualTo(Color.GRAY.getRGB());
  }

  @Test
  void whatThePictureDoesNotShow_isClear() {
    BufferedImage warped =
        WarpedPicture.of(picture(), 100, 60, LineUp.exact(Transform.shift(50, 0)));
    assertThat(warped.getRGB(49, 10)).isEqualTo(Color.GRAY.getRGB());
    assertThat(warped.getRGB(50, 10) >>> 24).isZero();
  }

  @Test
  void whatLiesBeyondTheHorizon_isClear() {
    Transform steep = new Transform(1, 0, 0, 0, 1, 0, -0.02, 0, 1);
    BufferedImage warped = WarpedPicture.of(picture(), 100, 60, LineUp.exact(steep));
    assertThat(warped.getRGB(10, 10) >>> 24).isEqualTo(255);
    assertThat(warped.getRGB(80, 10) >>> 24).isZero();
  }
}
