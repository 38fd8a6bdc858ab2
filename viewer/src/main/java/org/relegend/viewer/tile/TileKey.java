package org.relegend.viewer.tile;

import org.relegend.map.Box;

/**
 * One tile of a picture. At level n, one tile pixel covers 2ⁿ picture units, so photos have levels
 * from 0 upwards and pages, which stay sharp, also negative ones.
 */
public record TileKey(int level, int column, int row) {
  /** Width and height of a tile in its own pixels; those at the far edges are smaller. */
  public static final int SIZE = 512;

  /** Picture units that one tile pixel covers. */
  public double unit() {
    return Math.scalb(1.0, level);
  }

  /** What it covers of the picture, were the picture large enough. */
  public Box area() {
    double side = SIZE * unit();
    return new Box(column * side, row * side, (column + 1) * side, (row + 1) * side);
  }

  /** The tile of the next coarser level that covers this one. */
  public TileKey coarser() {
    return new TileKey(level + 1, column >> 1, row >> 1);
  }
}
