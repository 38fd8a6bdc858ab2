package org.relegend.demo.photo;

import java.awt.image.BufferedImage;

/** A developed photo. */
public final class Photo {
  private final int width;
  private final int height;
  private final int[] pixels;

  /** Takes the pixels as its own: sRGB {@code 0xRRGGBB}, row by row. */
  Photo(int width, int height, int[] pixels) {
    this.width = width;
    this.height = height;
    this.pixels = pixels;
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  /** The colour of one pixel, sRGB {@code 0xRRGGBB}. */
  public int pixel(int x, int y) {
    return pixels[y * width + x];
  }

  public BufferedImage image() {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    image.setRGB(0, 0, width, height, pixels, 0, width);
    return image;
  }
}
