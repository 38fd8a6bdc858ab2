package org.relegend.demo.ray;

/** The look of one point: colour in linear light 0..1, roughness 0..1, metal or not. */
public final class Surface {
  public double red;
  public double green;
  public double blue;
  public double roughness;
  public boolean metal;

  /** How much of the light passes through, 0 for an opaque body. */
  public double clear;

  public double nx;
  public double ny;
  public double nz;

  public void set(Paint paint) {
    red = paint.red();
    green = paint.green();
    blue = paint.blue();
    roughness = paint.roughness();
    metal = paint.metal();
    clear = 0;
  }

  /** Lays another paint over this one with a coverage of 0..1. */
  public void cover(Paint paint, double coverage) {
    red += (paint.red() - red) * coverage;
    green += (paint.green() - green) * coverage;
    blue += (paint.blue() - blue) * coverage;
    roughness += (paint.roughness() - roughness) * coverage;
    if (coverage > 0.5) {
      metal = paint.metal();
    }
  }

  public void shade(double factor) {
    red *= factor;
    green *= factor;
    blue *= factor;
  }
}
