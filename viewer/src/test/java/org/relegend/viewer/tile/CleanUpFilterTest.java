package org.relegend.viewer.tile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;

class CleanUpFilterTest {
  @Test
  void none_changesNothing() {
    assertThat(filtered(CleanUp.NONE, 0x123456)).isEqualTo(0x123456);
  }

  @Test
  void brightnessAndContrast_areAboutMidGrey() {
    assertThat(filtered(new CleanUp(1, 1, 0), 0x000000)).isEqualTo(0xFFFFFF);
    assertThat(filtered(new CleanUp(-1, 1, 0), 0xFFFFFF)).isZero();
    assertThat(filtered(new CleanUp(0, 2, 0), 0x6080A0)).isEqualTo(0x4181C1);
    assertThat(filtered(new CleanUp(0, 0.5, 0), 0x00FF80)).isEqualTo(0x40BF80);
  }

  @Test
  void threshold_leavesBlackAndWhite() {
    CleanUp halves = new CleanUp(0, 1, 128);
    assertThat(filtered(halves, 0x7F7F7F)).isZero();
    assertThat(filtered(halves, 0x808080)).isEqualTo(0xFFFFFF);
    assertThat(filtered(halves, 0x0000FF)).as("blue is dark").isZero();
    assertThat(filtered(halves, 0x00FF00)).as("green is light").isEqualTo(0xFFFFFF);
  }

  @Test
  void apply_changesTheAreaOnly() {
    BufferedImage image = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB);

    new CleanUpFilter(new CleanUp(1, 1, 0)).apply(image, new Rectangle(2, 3, 4, 5));

    for (int y = 0; y < 10; y++) {
      for (int x = 0; x < 10; x++) {
        boolean inside = x >= 2 && x < 6 && y >= 3 && y < 8;
        assertThat(image.getRGB(x, y) & 0xFFFFFF).isEqualTo(inside ? 0xFFFFFF : 0);
      }
    }
  }

  @Test
  void nonsense_isRefused() {
    assertThatThrownBy(() -> new CleanUp(2, 1, 0)).hasMessageContaining("brightness");
    assertThatThrownBy(() -> new CleanUp(0, 0, 0)).hasMessageContaining("contrast");
    assertThatThrownBy(() -> new CleanUp(0, 1, 256)).hasMessageContaining("threshold");
  }

  private static int filtered(CleanUp cleanUp, int rgb) {
    BufferedImage image = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
    image.setRGB(0, 0, rgb);
    new CleanUpFilter(cleanUp).apply(image, new Rectangle(1, 1));
    return image.getRGB(0, 0) & 0xFFFFFF;
  }
}
