package org.relegend.demo.photo;

import java.util.stream.IntStream;

/** Light on the sensor: linear red, green, blue for every pixel. */
final class Exposure {
  final int width;
  final int height;
  final float[][] planes;

  Exposure(int width, int height) {
    this.width = width;
    this.height = height;
    planes = new float[3][width * height];
  }

  /** Looks once at every pixel's middle, then four times where neighbours differ. */
  static Exposure of(Stage stage) {
    Camera camera = stage.shot.camera();
    Exposure exposure = new Exposure(camera.width(), camera.height());
    int height = exposure.height;
    IntStream.range(0, height).parallel().forEach(row -> exposure.look(stage, row));
    boolean[] rough = new boolean[exposure.width * height];
    IntStream.range(1, height - 1).parallel().forEach(row -> exposure.edges(row, rough));
    IntStream.range(0, height).parallel().forEach(row -> exposure.refine(stage, row, rough));
    return exposure;
  }

  private void look(Stage stage, int row) {
    Tracer tracer = new Tracer(stage);
    for (int column = 0; column < width; column++) {
      tracer.see(column + 0.5, row + 0.5);
      for (int k = 0; k < 3; k++) {
        planes[k][row * width + column] = (float) tracer.light[k];
      }
    }
  }

  private void edges(int row, boolean[] rough) {
    for (int column = 1; column < width - 1; column++) {
      int at = row * width + column;
      double here = tone(at);
      rough[at] =
          Math.abs(here - tone(at + 1)) > 0.055
              || Math.abs(here - tone(at - 1)) > 0.055
              || Math.abs(here - tone(at + width)) > 0.055
              || Math.abs(here - tone(at - width)) > 0.055;
    }
  }

  private double tone(int at) {
    double light = 0.3 * planes[0][at] + 0.6 * planes[1][at] + 0.1 * planes[2][at];
    return Math.sqrt(Math.min(1.2, light));
  }

  private void refine(Stage stage, int row, boolean[] rough) {
    Tracer tracer = new Tracer(stage);
    double[] shiftX = {-0.125, 0.375, -0.375, 0.125};
    double[] shiftY = {-0.375, -0.125, 0.125, 0.375};
    for (int column = 0; column < width; column++) {
      int at = row * width + column;
      if (rough[at]) {
        double[] sum = new double[3];
        for (int k = 0; k < 4; k++) {
          tracer.see(column + 0.5 + shiftX[k], row + 0.5 + shiftY[k]);
          for (int c = 0; c < 3; c++) {
            sum[c] += Math.min(4, tracer.light[c]);
          }
        }
        for (int c = 0; c < 3; c++) {
          planes[c][at] = (float) (sum[c] / 4);
        }
      }
    }
  }
}
