package org.relegend.viewer.tile;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/** Applies a {@link CleanUp} to pixels that were painted. */
public final class CleanUpFilter {
  private final CleanUp cleanUp;
  private final int[] table = new int[256];

  public CleanUpFilter(CleanUp cleanUp) {
    this.cleanUp = cleanUp;
    for (int value = 0; value < 256; value++) {
      double changed = (value - 127.5) * cleanUp.contrast() + 127.5 + 255 * cleanUp.brightness();
      table[value] = (int) Math.round(Math.max(0, Math.min(255, changed)));
    }
  }

  public CleanUp cleanUp() {
    return cleanUp;
  }

  /** Changes a part of an image of {@link BufferedImage#TYPE_INT_RGB}. */
  public void apply(BufferedImage image, Rectangle area) {
    if (cleanUp.equals(CleanUp.NONE)) {
      return;
    }
    int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    for (int y = area.y; y < area.y + area.height; y++) {
      int row = y * image.getWidth();
      for (int i = row + area.x; i < row + area.x + area.width; i++) {
        pixels[i] = cleanUp.threshold() > 0 ? blackOrWhite(pixels[i]) : changed(pixels[i]);
      }
    }
  }

  private int changed(int rgb) {
    return table[rgb >> 16 & 0xFF] << 16 | table[rgb >> 8 & 0xFF] << 8 | table[rgb & 0xFF];
  }

  /** After brightness and contrast, by luma as ITU-R BT.601 weighs the colours. */
  private int blackOrWhite(int rgb) {
    int luma =
        299 * table[rgb >> 16 & 0xFF] + 587 * table[rgb >> 8 & 0xFF] + 114 * table[rgb & 0xFF];
    return luma >= 1000 * cleanUp.threshold() ? 0xFFFFFF : 0;
  }
}
