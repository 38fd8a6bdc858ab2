package org.relegend.demo.route;

import org.relegend.demo.design.Spot;

/**
 * A square grid over the board; cells are numbered row by row. {@code pitch} in millimetres, the
 * first cell lies in the board's upper left corner.
 */
record Grid(int columns, int rows, double pitch) {
  static Grid over(double width, double height, double pitch) {
    return new Grid((int) (width / pitch) + 1, (int) (height / pitch) + 1, pitch);
  }

  int cells() {
    return columns * rows;
  }

  int cell(Spot at) {
    return row(at.y()) * columns + column(at.x());
  }

  Spot spot(int cell) {
    int row = cell / columns;
    return new Spot((cell - row * columns) * pitch, row * pitch);
  }

  int column(double x) {
    return Math.max(0, Math.min(columns - 1, (int) Math.round(x / pitch)));
  }

  int row(double y) {
    return Math.max(0, Math.min(rows - 1, (int) Math.round(y / pitch)));
  }
}
