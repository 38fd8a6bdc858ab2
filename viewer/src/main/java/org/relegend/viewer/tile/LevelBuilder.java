package org.relegend.viewer.tile;

import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.relegend.scan.PhotoRows;

/**
 * Makes the tiles of all levels of a picture from its rows, in one pass: each level takes the mean
 * of two by two pixels of the one before. Holds one row of tiles a level and no more.
 */
final class LevelBuilder implements PhotoRows.Sink {
  /** Takes finished tiles. */
  @FunctionalInterface
  interface Tiles {
    /**
     * One tile.
     *
     * @param samples its own array, row by row, as many bytes a pixel as the picture has
     */
    void tile(TileKey key, int width, int height, byte[] samples) throws IOException;
  }

  private final int level;
  private final int width;
  private final int height;
  private final int bands;
  private final Tiles tiles;
  private final @Nullable LevelBuilder coarser;
  private final byte[] halved;
  private final byte[] previous;
  private byte[][] columns = {};

  /**
   * Starts at a level.
   *
   * @param width of the picture in pixels of this level
   * @param bands bytes a pixel
   */
  LevelBuilder(int level, int width, int height, int bands, Tiles tiles) {
    this.level = level;
    this.width = width;
    this.height = height;
    this.bands = bands;
    this.tiles = tiles;
    boolean last = width <= TileKey.SIZE && height <= TileKey.SIZE;
    this.coarser =
        last ? null : new LevelBuilder(level + 1, half(width), half(height), bands, tiles);
    this.halved = new byte[last ? 0 : half(width) * bands];
    this.previous = new byte[last ? 0 : width * bands];
  }

  static int half(int size) {
    return (size + 1) / 2;
  }

  @Override
  public void row(int y, byte[] samples) throws IOException {
    int inTile = y % TileKey.SIZE;
    if (inTile == 0) {
      startTiles(Math.min(TileKey.SIZE, height - y));
    }
    for (int column = 0; column < columns.length; column++) {
      int w = tileWidth(column) * bands;
      System.arraycopy(samples, column * TileKey.SIZE * bands, columns[column], inTile * w, w);
    }
    if (inTile == TileKey.SIZE - 1 || y == height - 1) {
      finishTiles(y / TileKey.SIZE, inTile + 1);
    }
    passOn(y, samples);
  }

  private void startTiles(int rows) {
    columns = new byte[(width + TileKey.SIZE - 1) / TileKey.SIZE][];
    for (int column = 0; column < columns.length; column++) {
      columns[column] = new byte[tileWidth(column) * rows * bands];
    }
  }

  private void finishTiles(int row, int rows) throws IOException {
    byte[][] finished = columns;
    columns = new byte[0][];
    for (int column = 0; column < finished.length; column++) {
      tiles.tile(new TileKey(level, column, row), tileWidth(column), rows, finished[column]);
    }
  }

  private int tileWidth(int column) {
    return Math.min(TileKey.SIZE, width - column * TileKey.SIZE);
  }

  /** Every second row, and a last one that is alone, makes a row of the next level. */
  private void passOn(int y, byte[] samples) throws IOException {
    if (coarser == null) {
      return;
    }
    if (y % 2 == 1) {
      halve(previous, samples);
      coarser.row(y / 2, halved);
    } else if (y == height - 1) {
      halve(samples, samples);
      coarser.row(y / 2, halved);
    } else {
      System.arraycopy(samples, 0, previous, 0, previous.length);
    }
  }

  private void halve(byte[] above, byte[] below) {
    int pairs = width / 2;
    int to = 0;
    for (int x = 0; x < pairs; x++) {
      int from = 2 * x * bands;
      for (int band = 0; band < bands; band++, from++) {
        int next = from + bands;
        int sum =
            (above[from] & 0xFF)
                + (above[next] & 0xFF)
                + (below[from] & 0xFF)
                + (below[next] & 0xFF);
        halved[to++] = (byte) (sum + 2 >> 2);
      }
    }
    if (width % 2 == 1) {
      for (int from = 2 * pairs * bands; from < width * bands; from++) {
        halved[to++] = (byte) ((above[from] & 0xFF) + (below[from] & 0xFF) + 1 >> 1);
      }
    }
  }
}
