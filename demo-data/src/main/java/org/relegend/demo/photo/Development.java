package org.relegend.demo.photo;

import java.util.stream.IntStream;
import org.relegend.demo.draw.Noise;
import org.relegend.demo.ray.Light;

/** From light on the sensor to a stored picture: blur, glare, fall-off, noise, tone. */
final class Development {
  private static final int TONES = 4096;
  private static final double FULL = 1.25;

  private final Exposure exposure;
  private final Finish finish;
  private final long seed;
  private final int width;
  private final int height;
  private final float[] curve = new float[TONES + 1];

  Development(Exposure exposure, Finish finish, long seed) {
    this.exposure = exposure;
    this.finish = finish;
    this.seed = seed;
    width = exposure.width;
    height = exposure.height;
    for (int k = 0; k <= TONES; k++) {
      curve[k] = (float) (255 * Light.stored(shoulder(FULL * k / TONES)));
    }
  }

  Photo photo() {
    double unit = width / 4000.0;
    for (int k = 0; k < 3; k++) {
      float[] plane = exposure.planes[k];
      if (finish.shake() * unit > 0.3) {
        plane = Smear.diagonal(plane, width, finish.shake() * unit);
      }
      exposure.planes[k] = Smear.soft(plane, width, finish.blur() * unit);
    }
    int[] pixels = new int[width * height];
    IntStream.range(0, height).parallel().forEach(row -> develop(row, pixels));
    return new Photo(width, height, pixels);
  }

  private void develop(int row, int[] pixels) {
    double[] tones = new double[3];
    for (int column = 0; column < width; column++) {
      int at = row * width + column;
      double x = (column + 0.5 - width / 2.0) / (width / 2.0);
      double y = (row + 0.5 - height / 2.0) / (width / 2.0);
      double dim = 1 - finish.vignette() * (x * x + y * y) / 1.5625;
      double flare = flare(column, row);
      for (int k = 0; k < 3; k++) {
        double light = exposure.planes[k][at] * dim * finish.exposure() + flare + 0.0025;
        tones[k] = curve[(int) (Math.max(0, Math.min(FULL, light)) / FULL * TONES)];
      }
      pixels[at] = noisy(column, row, tones);
    }
  }

  /** A lamp mirrored in lacquer: a burnt-out core and a wide veil. */
  private double flare(int column, int row) {
    if (finish.glare() <= 0) {
      return 0;
    }
    double dx = (column + 0.5) / width - finish.glareX();
    double dy = ((row + 0.5) / height - finish.glareY()) * height / width;
    double far = dx * dx * 0.8 + dy * dy * 1.4;
    double core = 1 / (1 + far * far * 90000);
    double veil = 1 / (1 + far * 60);
    return finish.glare() * (1.3 * core + 0.16 * veil);
  }

  private int noisy(int column, int row, double[] tones) {
    double grey = 0.3 * tones[0] + 0.6 * tones[1] + 0.1 * tones[2];
    double spread = finish.grain() * (0.55 + 0.45 * Math.sqrt(Math.max(0, 255 - grey) / 128));
    double common = Noise.bell(seed + 11, column, row) * spread * 0.8;
    int packed = 0;
    for (int k = 0; k < 3; k++) {
      double own = Noise.bell(seed + 12 + k, column / 2, row / 2) * spread * 0.5;
      int value = (int) Math.rint(tones[k] + common + own);
      packed = packed << 8 | Math.max(0, Math.min(255, value));
    }
    return packed;
  }

  /** Straight up to three quarters, then bent so that highlights run out softly. */
  private static double shoulder(double light) {
    if (light <= 0.6) {
      return light;
    }
    double over = (light - 0.6) / (FULL - 0.6);
    return 0.6 + 0.4 * (1 - (1 - over) * (1 - over));
  }
}
