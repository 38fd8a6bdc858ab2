package org.relegend.demo.photo;

import org.relegend.demo.draw.Noise;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Surface;

/** What the board lies on. */
public enum Bench {
  /** A grey-blue rubber mat. */
  MAT {
    @Override
    void paint(double x, double y, long seed, Surface surface) {
      surface.set(RUBBER);
      double speck = Noise.smooth(seed, x * 1.3, y * 1.3);
      double wide = Noise.cloud(seed + 5, x / 40, y / 40, 3);
      surface.shade(0.82 + 0.12 * speck + 0.2 * wide);
      double scratch = Noise.smooth(seed + 9, x * 0.05 + y * 0.35, y * 0.04 - x * 0.3);
      if (scratch > 0.93) {
        surface.shade(1.06);
      }
    }
  },
  /** A wooden bench top. */
  WOOD {
    @Override
    void paint(double x, double y, long seed, Surface surface) {
      surface.set(BEECH);
      double bend = 9 * Noise.cloud(seed, x / 120, y / 45, 3);
      double ring = Noise.smooth(seed + 3, x / 160, y / 1.7 + 1.6 * bend);
      double fibre = Noise.smooth(seed + 4, x / 4, y * 5.5);
      surface.shade(0.72 + 0.3 * ring + 0.16 * fibre);
      surface.blue *= 0.86 + 0.14 * ring;
    }
  };

  private static final Paint RUBBER = Paint.of(0x5F6F7C, 0.8);
  private static final Paint BEECH = Paint.of(0xB98A58, 0.55);

  abstract void paint(double x, double y, long seed, Surface surface);
}
