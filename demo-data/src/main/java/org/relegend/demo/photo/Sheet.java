package org.relegend.demo.photo;

import org.relegend.demo.ray.Hit;
import org.relegend.demo.ray.Skin;
import org.relegend.demo.ray.Surface;

/**
 * One face of the bare board as a picture: colour, gloss and relief, at so many pixels a millimetre
 * of the view.
 */
final class Sheet implements Skin {
  final int width;
  final int height;
  final double scale;

  /** Linear light, three values a pixel. */
  final float[] colour;

  final float[] roughness;

  /** Height over the laminate in millimetres; empty for a flat face. */
  final float[] relief;

  /** Share of metal at the surface, 0..1. */
  final float[] metal;

  Sheet(double widthMm, double heightMm, double scale, boolean embossed) {
    width = (int) Math.ceil(widthMm * scale);
    height = (int) Math.ceil(heightMm * scale);
    this.scale = scale;
    colour = new float[3 * width * height];
    roughness = new float[width * height];
    relief = new float[embossed ? width * height : 0];
    metal = new float[embossed ? width * height : 0];
  }

  @Override
  public void paint(Hit hit, Surface surface) {
    double px = Math.max(1, Math.min(width - 2.001, hit.x * scale - 0.5));
    double py = Math.max(1, Math.min(height - 2.001, hit.y * scale - 0.5));
    int x = (int) px;
    int y = (int) py;
    double tx = px - x;
    double ty = py - y;
    int at = y * width + x;
    double a = (1 - tx) * (1 - ty);
    double b = tx * (1 - ty);
    double c = (1 - tx) * ty;
    double d = tx * ty;
    int n = 3 * at;
    int w = 3 * width;
    surface.red = a * colour[n] + b * colour[n + 3] + c * colour[n + w] + d * colour[n + w + 3];
    surface.green =
        a * colour[n + 1] + b * colour[n + 4] + c * colour[n + w + 1] + d * colour[n + w + 4];
    surface.blue =
        a * colour[n + 2] + b * colour[n + 5] + c * colour[n + w + 2] + d * colour[n + w + 5];
    surface.roughness =
        a * roughness[at]
            + b * roughness[at + 1]
            + c * roughness[at + width]
            + d * roughness[at + width + 1];
    surface.metal = false;
    surface.clear = 0;
    if (relief.length > 0) {
      emboss(at, a, b, c, d, surface);
    }
  }

  private void emboss(int at, double a, double b, double c, double d, Surface surface) {
    double share =
        a * metal[at] + b * metal[at + 1] + c * metal[at + width] + d * metal[at + width + 1];
    surface.metal = share > 0.5;
    double half = scale / 2;
    double slopeX =
        half
            * (a * (relief[at + 1] - relief[at - 1])
                + b * (relief[at + 2] - relief[at])
                + c * (relief[at + width + 1] - relief[at + width - 1])
                + d * (relief[at + width + 2] - relief[at + width]));
    double slopeY =
        half
            * (a * (relief[at + width] - relief[at - width])
                + b * (relief[at + width + 1] - relief[at - width + 1])
                + c * (relief[below(at + width)] - relief[at])
                + d * (relief[below(at + width) + 1] - relief[at + 1]));
    double inverse = 1 / Math.sqrt(slopeX * slopeX + slopeY * slopeY + 1);
    surface.nx = -slopeX * inverse;
    surface.ny = -slopeY * inverse;
    surface.nz = inverse;
  }

  private int below(int at) {
    return Math.min(at + width, relief.length - 2);
  }
}
