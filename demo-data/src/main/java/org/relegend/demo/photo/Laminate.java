package org.relegend.demo.photo;

import org.relegend.demo.draw.Noise;
import org.relegend.demo.ray.Paint;

/** The bare board material: its colour, cloth, clouds and marks of use. */
final class Laminate {
  private final Paint base;
  private final boolean cloth;
  private final long seed;

  Laminate(BoardLook look, long seed) {
    base = Paint.of(look.laminate(), 0.42);
    cloth = look.finish() != BoardLook.TrackFinish.BARE;
    this.seed = seed;
  }

  /** Writes the laminate's colour at a place of the view, times a factor. */
  void colour(double x, double y, double factor, float[] into, int at) {
    double wide = Noise.cloud(seed, x / 38, y / 38, 3) - 0.5;
    double fine = Noise.smooth(seed + 7, x * 2.6, y * 2.6) - 0.5;
    double weave = cloth ? weave(x, y) : 0.06 * (Noise.smooth(seed + 8, x * 0.9, y * 5) - 0.5);
    double grime = Math.max(0, Noise.cloud(seed + 21, x / 14, y / 14, 4) - 0.6);
    double light = factor * (1 + 0.16 * wide + 0.07 * fine + weave) * (1 - 0.6 * grime);
    into[at] = (float) (base.red() * light * (1 + 0.04 * wide));
    into[at + 1] = (float) (base.green() * light);
    into[at + 2] = (float) (base.blue() * light * (1 - 0.12 * wide - 0.3 * grime));
  }

  /** Glass cloth: warp and weft under and over each other, 0.52 mm apart. */
  private double weave(double x, double y) {
    double u = (x + 0.02 * y) / 0.52;
    double v = (y - 0.015 * x) / 0.52;
    double warp = Math.abs(u - Math.floor(u) - 0.5);
    double weft = Math.abs(v - Math.floor(v) - 0.5);
    boolean over = (((long) Math.floor(u) + (long) Math.floor(v)) & 1) == 0;
    double strength = 0.5 + Noise.smooth(seed + 3, x / 5, y / 5);
    return 0.09 * strength * ((over ? warp : weft) - 0.25);
  }
}
