package org.relegend.viewer.tile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.relegend.map.Box;

/**
 * Which tiles a picture has.
 *
 * @param width in picture units
 * @param height in picture units
 * @param finest the most detailed level
 */
record TileGrid(double width, double height, int finest) {
  /** The level at which the whole is one tile. */
  int coarsest() {
    int level = finest;
    while (Math.max(width, height) > TileKey.SIZE * Math.scalb(1.0, level)) {
      level++;
    }
    return level;
  }

  boolean has(TileKey key) {
    return key.level() >= finest
        && key.level() <= coarsest()
        && key.column() >= 0
        && key.row() >= 0
        && key.area().left() < width
        && key.area().top() < height;
  }

  /** The level whose pixels are, on the screen, at most one pixel and more than a half. */
  int levelFor(double pixelsPerUnit) {
    int level = (int) Math.floor(Math.log(1 / pixelsPerUnit) / Math.log(2) + 1e-9);
    return Math.max(finest, Math.min(coarsest(), level));
  }

  /** The tiles of a level that a box touches, those nearest its middle first. */
  List<TileKey> covering(Box box, int level) {
    double side = TileKey.SIZE * Math.scalb(1.0, level);
    int left = (int) Math.floor(Math.max(0, box.left()) / side);
    int top = (int) Math.floor(Math.max(0, box.top()) / side);
    int right = (int) Math.floor(Math.min(width, box.right()) / side);
    int bottom = (int) Math.floor(Math.min(height, box.bottom()) / side);
    List<TileKey> keys = new ArrayList<>();
    for (int row = top; row <= bottom; row++) {
      for (int column = left; column <= right; column++) {
        TileKey key = new TileKey(level, column, row);
        if (has(key)) {
          keys.add(key);
        }
      }
    }
    keys.sort(Comparator.comparingDouble(key -> key.area().centre().distance(box.centre())));
    return keys;
  }

  /** Width of a tile in its pixels. */
  int tileWidth(TileKey key) {
    return extent(width - key.area().left(), key.unit());
  }

  int tileHeight(TileKey key) {
    return extent(height - key.area().top(), key.unit());
  }

  private static int extent(double units, double unit) {
    return (int) Math.max(1, Math.min(TileKey.SIZE, Math.ceil(units / unit - 1e-9)));
  }
}
