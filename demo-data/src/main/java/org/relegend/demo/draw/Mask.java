package org.relegend.demo.draw;

import java.util.List;

/**
 * A sheet of coverage values 0..255, drawn on in millimetres with smooth edges. Shapes only add:
 * each point keeps the greatest coverage.
 */
public final class Mask {
  private final int width;
  private final int height;
  private final double scale;
  private final byte[] cover;

  /** A clear sheet of so many millimetres at so many pixels a millimetre. */
  public Mask(double width, double height, double scale) {
    this.width = (int) Math.ceil(width * scale);
    this.height = (int) Math.ceil(height * scale);
    this.scale = scale;
    cover = new byte[this.width * this.height];
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  public double scale() {
    return scale;
  }

  /** Coverage 0..255 of one pixel; 0 outside. */
  public int pixel(int x, int y) {
    return x < 0 || y < 0 || x >= width || y >= height ? 0 : cover[y * width + x] & 255;
  }

  /** Coverage 0..1 at a place in millimetres, blended between pixels. */
  public double at(double x, double y) {
    double px = x * scale - 0.5;
    double py = y * scale - 0.5;
    int ix = (int) Math.floor(px);
    int iy = (int) Math.floor(py);
    double tx = px - ix;
    double ty = py - iy;
    double top = pixel(ix, iy) * (1 - tx) + pixel(ix + 1, iy) * tx;
    double low = pixel(ix, iy + 1) * (1 - tx) + pixel(ix + 1, iy + 1) * tx;
    return (top * (1 - ty) + low * ty) / 255;
  }

  public void disc(double x, double y, double radius) {
    stroke(x, y, x, y, radius * 2);
  }

  /** A ring between two radii. */
  public void ring(double x, double y, double inner, double outer) {
    int steps = 48;
    double middle = (inner + outer) / 2;
    for (int k = 0; k < steps; k++) {
      double a = 2 * Math.PI * k / steps;
      double b = 2 * Math.PI * (k + 1) / steps;
      stroke(
          x + middle * StrictMath.cos(a),
          y + middle * StrictMath.sin(a),
          x + middle * StrictMath.cos(b),
          y + middle * StrictMath.sin(b),
          outer - inner);
    }
  }

  public void stroke(List<double[]> run, double width) {
    for (int k = 0; k + 1 < run.size(); k++) {
      stroke(run.get(k)[0], run.get(k)[1], run.get(k + 1)[0], run.get(k + 1)[1], width);
    }
  }

  /** A straight stroke with round ends. */
  public void stroke(double x0, double y0, double x1, double y1, double thickness) {
    double radius = thickness / 2;
    double ax = x0 * scale;
    double ay = y0 * scale;
    double dx = (x1 - x0) * scale;
    double dy = (y1 - y0) * scale;
    double square = dx * dx + dy * dy;
    double reach = radius * scale + 1;
    int left = Math.max(0, (int) Math.floor(Math.min(ax, ax + dx) - reach));
    int right = Math.min(width - 1, (int) Math.ceil(Math.max(ax, ax + dx) + reach));
    int top = Math.max(0, (int) Math.floor(Math.min(ay, ay + dy) - reach));
    int bottom = Math.min(height - 1, (int) Math.ceil(Math.max(ay, ay + dy) + reach));
    for (int y = top; y <= bottom; y++) {
      for (int x = left; x <= right; x++) {
        double px = x + 0.5 - ax;
        double py = y + 0.5 - ay;
        double along = square == 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / square));
        double ex = px - along * dx;
        double ey = py - along * dy;
        double inside = radius * scale - Math.sqrt(ex * ex + ey * ey) + 0.5;
        if (inside > 0) {
          raise(x, y, inside);
        }
      }
    }
  }

  /** A filled polygon, corners in order; sampled four by four within a pixel. */
  public void polygon(List<double[]> corners) {
    double left = corners.stream().mapToDouble(c -> c[0]).min().orElse(0);
    double right = corners.stream().mapToDouble(c -> c[0]).max().orElse(0);
    double top = corners.stream().mapToDouble(c -> c[1]).min().orElse(0);
    double bottom = corners.stream().mapToDouble(c -> c[1]).max().orElse(0);
    for (int y = Math.max(0, (int) (top * scale));
        y <= Math.min(height - 1, (int) (bottom * scale));
        y++) {
      for (int x = Math.max(0, (int) (left * scale));
          x <= Math.min(width - 1, (int) (right * scale));
          x++) {
        int hits = 0;
        for (int k = 0; k < 16; k++) {
          double sx = (x + ((k & 3) + 0.5) / 4) / scale;
          double sy = (y + ((k >> 2) + 0.5) / 4) / scale;
          hits += within(corners, sx, sy) ? 1 : 0;
        }
        raise(x, y, hits / 16.0);
      }
    }
  }

  public void box(double x0, double y0, double x1, double y1) {
    polygon(
        List.of(
            new double[] {x0, y0},
            new double[] {x1, y0},
            new double[] {x1, y1},
            new double[] {x0, y1}));
  }

  private void raise(int x, int y, double coverage) {
    int value = (int) (Math.min(1, coverage) * 255 + 0.5);
    int index = y * width + x;
    if (value > (cover[index] & 255)) {
      cover[index] = (byte) value;
    }
  }

  private static boolean within(List<double[]> corners, double x, double y) {
    boolean inside = false;
    for (int k = 0, before = corners.size() - 1; k < corners.size(); before = k++) {
      double[] a = corners.get(k);
      double[] b = corners.get(before);
      if (a[1] > y != b[1] > y && x < (b[0] - a[0]) * (y - a[1]) / (b[1] - a[1]) + a[0]) {
        inside = !inside;
      }
    }
    return inside;
  }
}
