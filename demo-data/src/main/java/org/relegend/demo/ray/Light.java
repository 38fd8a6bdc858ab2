package org.relegend.demo.ray;

/** From stored colour values to light and back, after IEC 61966-2-1 (sRGB). */
public final class Light {
  private static final double[] LINEAR = new double[256];

  static {
    for (int k = 0; k < 256; k++) {
      double c = k / 255.0;
      LINEAR[k] = c <= 0.04045 ? c / 12.92 : StrictMath.pow((c + 0.055) / 1.055, 2.4);
    }
  }

  private Light() {}

  /** Linear light 0..1 of an 8-bit value. */
  public static double linear(int value) {
    return LINEAR[value];
  }

  /** Stored value 0..1 of linear light 0..1. */
  public static double stored(double light) {
    double c = Math.max(0, Math.min(1, light));
    return c <= 0.0031308 ? 12.92 * c : 1.055 * StrictMath.pow(c, 1 / 2.4) - 0.055;
  }
}
