package org.relegend.demo.page;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.stream.IntStream;
import org.relegend.demo.draw.Mask;
import org.relegend.demo.draw.Noise;

/**
 * Makes an inked sheet look like a poor scan of a poor copy: turned, grey, blotched, strokes faded
 * and ragged.
 */
final class Scan {
  /** Pixels of the scan per point: 200 dots per inch. */
  static final double SCALE = 200 / 72.0;

  private static final double TURN = StrictMath.toRadians(0.7);
  private static final double SHIFT_X = 3.4;
  private static final double SHIFT_Y = -2.1;

  private final Mask ink;
  private final double width;
  private final double height;
  private final long seed;

  /** Page size in points. */
  Scan(Mask ink, double width, double height, long seed) {
    this.ink = ink;
    this.width = width;
    this.height = height;
    this.seed = seed;
  }

  /** Where a point of the inked sheet lies on the scan, both in points. */
  static Dot placed(Dot at, double width, double height) {
    double c = StrictMath.cos(TURN);
    double s = StrictMath.sin(TURN);
    double x = at.x() - width / 2;
    double y = at.y() - height / 2;
    return new Dot(width / 2 + SHIFT_X + c * x - s * y, height / 2 + SHIFT_Y + s * x + c * y);
  }

  BufferedImage image() {
    int columns = (int) Math.rint(width * SCALE);
    int rows = (int) Math.rint(height * SCALE);
    BufferedImage image = new BufferedImage(columns, rows, BufferedImage.TYPE_BYTE_GRAY);
    byte[] pixels = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    double c = StrictMath.cos(TURN);
    double s = StrictMath.sin(TURN);
    IntStream.range(0, rows)
        .parallel()
        .forEach(
            row -> {
              for (int column = 0; column < columns; column++) {
                double x = (column + 0.5) * width / columns - width / 2 - SHIFT_X;
                double y = (row + 0.5) * height / rows - height / 2 - SHIFT_Y;
                double sheetX = width / 2 + c * x + s * y;
                double sheetY = height / 2 - s * x + c * y;
                pixels[row * columns + column] = (byte) grey(sheetX, sheetY, column, row);
              }
            });
    return image;
  }

  private int grey(double x, double y, int column, int row) {
    double raggedX = x + 0.35 * (Noise.smooth(seed + 1, x * 1.2, y * 1.2) - 0.5);
    double raggedY = y + 0.35 * (Noise.smooth(seed + 2, x * 1.2, y * 1.2) - 0.5);
    double stroke = ink.at(raggedX, raggedY);
    double faint = Noise.cloud(seed + 3, x / 70, y / 70, 3);
    double grain = Noise.smooth(seed + 4, x * 2.2, y * 2.2);
    double strength = 0.35 + 0.75 * faint + 0.35 * (grain - 0.5);
    double worn = Noise.smooth(seed + 5, x * 0.9, y * 0.9) > 0.9 ? 0.45 : 1;
    double paper = 214 + 24 * (Noise.cloud(seed + 6, x / 160, y / 160, 3) - 0.5);
    paper -= 46 * edge(x, y);
    paper -= 9 * fold(x);
    double value = paper - 175 * stroke * Math.min(1, strength) * worn;
    double speck = Noise.smooth(seed + 7, x * 1.4, y * 1.4);
    if (speck > 0.972) {
      value -= 110 * (speck - 0.972) / 0.028;
    }
    value += 7 * Noise.bell(seed + 8, column, row);
    if (x < 0 || y < 0 || x > width || y > height) {
      value = 62 + 8 * Noise.bell(seed + 9, column, row);
    }
    return (int) Math.max(0, Math.min(255, Math.rint(value)));
  }

  /** The shade of a copier's lid along two edges. */
  private double edge(double x, double y) {
    double left = Math.max(0, 1 - x / 26);
    double low = Math.max(0, 1 - (height - y) / 18);
    return Math.max(left * left, low * low);
  }

  private double fold(double x) {
    double off = Math.abs(x - width * 0.5) / 2.2;
    return off < 1 ? 1 - off : 0;
  }
}
