package org.relegend.demo.photo;

import java.util.stream.IntStream;
import org.relegend.demo.draw.Noise;
import org.relegend.demo.ray.Hit;
import org.relegend.demo.ray.Ray;
import org.relegend.demo.ray.Scene;

/**
 * How much of the lamp, and of the light from all round, reaches each place of the board's face:
 * worked out once on a coarse grid, blended in between.
 */
final class Shadow {
  private static final int RAYS = 12;
  private static final int TURNS = 256;

  /** The golden angle in turns of 1/256: rays spread evenly over a disc. */
  private static final int STEP = 98;

  private static final double[] CIRCLE = circle();

  private final double scale;
  private final int width;
  private final int height;
  private final float[] lamp;
  private final float[] round;

  /** The grid's scale is in points a millimetre. */
  Shadow(Scene scene, double widthMm, double heightMm, double scale, Lighting light, long seed) {
    this.scale = scale;
    width = (int) Math.ceil(widthMm * scale) + 1;
    height = (int) Math.ceil(heightMm * scale) + 1;
    float[] lit = new float[width * height];
    float[] open = new float[width * height];
    IntStream.range(0, height)
        .parallel()
        .forEach(
            row -> {
              Ray ray = new Ray();
              Hit hit = new Hit();
              for (int column = 0; column < width; column++) {
                double x = column / scale;
                double y = row / scale;
                int at = row * width + column;
                int turn = (int) (Noise.at(seed, column, row) * TURNS);
                lit[at] = lit(scene, light, x, y, turn, ray, hit);
                open[at] = open(scene, x, y, turn, ray, hit);
              }
            });
    lamp = smooth(lit);
    round = smooth(open);
  }

  double lamp(double x, double y) {
    return blend(lamp, x, y);
  }

  double round(double x, double y) {
    return blend(round, x, y);
  }

  /** The share of a lamp that is seen from a point. */
  private static float lit(
      Scene scene, Lighting light, double x, double y, int turn, Ray ray, Hit hit) {
    int free = 0;
    for (int k = 0; k < RAYS; k++) {
      double out = light.size() * Math.sqrt((k + 0.5) / RAYS);
      double dx = light.lamp().x() + out * cosine(k, turn) - x;
      double dy = light.lamp().y() + out * sine(k, turn) - y;
      ray.set(x, y, 0.02, dx, dy, light.lamp().z());
      free += scene.blocked(ray, 1e-5, 1, hit) ? 0 : 1;
    }
    return free / (float) RAYS;
  }

  private static float open(Scene scene, double x, double y, int turn, Ray ray, Hit hit) {
    int free = 0;
    for (int k = 0; k < RAYS; k++) {
      double out = Math.sqrt((k + 0.5) / RAYS);
      double up = Math.sqrt(1 - out * out);
      ray.set(x, y, 0.02, out * cosine(k, turn), out * sine(k, turn), up);
      free += scene.blocked(ray, 1e-4, 30, hit) ? 0 : 1;
    }
    return free / (float) RAYS;
  }

  private static double cosine(int k, int turn) {
    return CIRCLE[2 * ((STEP * k + turn) % TURNS)];
  }

  private static double sine(int k, int turn) {
    return CIRCLE[2 * ((STEP * k + turn) % TURNS) + 1];
  }

  private static double[] circle() {
    double[] circle = new double[2 * TURNS];
    for (int k = 0; k < TURNS; k++) {
      circle[2 * k] = StrictMath.cos(2 * Math.PI * k / TURNS);
      circle[2 * k + 1] = StrictMath.sin(2 * Math.PI * k / TURNS);
    }
    return circle;
  }

  private float[] smooth(float[] from) {
    float[] to = new float[from.length];
    for (int row = 0; row < height; row++) {
      for (int column = 0; column < width; column++) {
        float sum = 0;
        for (int dy = -1; dy <= 1; dy++) {
          for (int dx = -1; dx <= 1; dx++) {
            int y = Math.max(0, Math.min(height - 1, row + dy));
            int x = Math.max(0, Math.min(width - 1, column + dx));
            sum += from[y * width + x];
          }
        }
        to[row * width + column] = sum / 9;
      }
    }
    return to;
  }

  private double blend(float[] values, double x, double y) {
    double px = Math.max(0, Math.min(width - 1.001, x * scale));
    double py = Math.max(0, Math.min(height - 1.001, y * scale));
    int ix = (int) px;
    int iy = (int) py;
    double tx = px - ix;
    double ty = py - iy;
    int at = iy * width + ix;
    return (values[at] * (1 - tx) + values[at + 1] * tx) * (1 - ty)
        + (values[at + width] * (1 - tx) + values[at + width + 1] * tx) * ty;
  }
}
