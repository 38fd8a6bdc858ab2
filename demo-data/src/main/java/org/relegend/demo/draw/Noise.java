package org.relegend.demo.draw;

/** Noise that depends on nothing but a seed and a place, so that threads may come in any order. */
public final class Noise {
  private Noise() {}

  /** Mixes bits; the finalizer of SplitMix64 (Steele, Lea, Flood 2014). */
  public static long mix(long value) {
    long z = (value ^ (value >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }

  /** Even over 0..1, one value a seed and pair of numbers. */
  public static double at(long seed, long x, long y) {
    return (mix(seed * 0x9e3779b97f4a7c15L + x * 0x632be59bd9b4e019L + y * 0x94d049bb133111ebL)
            >>> 11)
        * 0x1p-53;
  }

  /** Even over 0..1, one value a seed, name and number. */
  public static double of(long seed, String name, int number) {
    long hash = seed;
    for (int k = 0; k < name.length(); k++) {
      hash = mix(hash * 31 + name.charAt(k));
    }
    return at(hash, number, 7);
  }

  /** About normal with spread 1: four even values summed. */
  public static double bell(long seed, long x, long y) {
    long bits = mix(seed * 0x9e3779b97f4a7c15L + x * 0x632be59bd9b4e019L + y * 0x94d049bb133111ebL);
    double sum = (bits & 0xffff) + (bits >>> 16 & 0xffff) + (bits >>> 32 & 0xffff) + (bits >>> 48);
    return (sum / 65536 - 2) * 1.7320508;
  }

  /** Smooth between whole places, 0..1. */
  public static double smooth(long seed, double x, double y) {
    double fx = Math.floor(x);
    double fy = Math.floor(y);
    long ix = (long) fx;
    long iy = (long) fy;
    double tx = ease(x - fx);
    double ty = ease(y - fy);
    double top = at(seed, ix, iy) * (1 - tx) + at(seed, ix + 1, iy) * tx;
    double low = at(seed, ix, iy + 1) * (1 - tx) + at(seed, ix + 1, iy + 1) * tx;
    return top * (1 - ty) + low * ty;
  }

  /** Several octaves of {@link #smooth}, 0..1. */
  public static double cloud(long seed, double x, double y, int octaves) {
    double sum = 0;
    double share = 0.5;
    double whole = 0;
    double scale = 1;
    for (int k = 0; k < octaves; k++) {
      sum += share * smooth(seed + k, x * scale, y * scale);
      whole += share;
      share /= 2;
      scale *= 2.03;
    }
    return sum / whole;
  }

  private static double ease(double t) {
    return t * t * (3 - 2 * t);
  }
}
