package org.relegend.viewer.tile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LevelBuilderTest {
  private static final class Tile {
    private final int width;
    private final int height;
    private final byte[] samples;

    Tile(int width, int height, byte[] samples) {
      this.width = width;
      this.height = height;
      this.samples = samples;
    }
  }

  /** The oracle halves whole images by the definition: the mean of the pixels there are. */
  @ParameterizedTest(name = "{0} x {1}, {2} bytes a pixel")
  @CsvSource({
    "1300, 1100, 3",
    "1025, 513, 1",
    "512, 512, 3",
    "1, 1, 3",
    "1537, 3, 1",
    "5, 2050, 1"
  })
  void levels_areTheMeansOfTwoByTwo(int width, int height, int bands) throws Exception {
    byte[] pixels = new byte[width * height * bands];
    new Random(width).nextBytes(pixels);
    Map<TileKey, Tile> tiles = build(pixels, width, height, bands);

    int level = 0;
    int w = width;
    int h = height;
    int checked = 0;
    while (true) {
      checked += assertLevel(tiles, level, pixels, w, h, bands);
      if (w <= TileKey.SIZE && h <= TileKey.SIZE) {
        break;
      }
      pixels = halved(pixels, w, h, bands);
      w = LevelBuilder.half(w);
      h = LevelBuilder.half(h);
      level++;
    }
    assertThat(tiles).hasSize(checked);
    assertThat(level).isEqualTo(new TileGrid(width, height, 0).coarsest());
  }

  private static int assertLevel(
      Map<TileKey, Tile> tiles, int level, byte[] pixels, int width, int height, int bands) {
    int count = 0;
    for (int row = 0; row * TileKey.SIZE < height; row++) {
      for (int column = 0; column * TileKey.SIZE < width; column++) {
        Tile tile = tiles.get(new TileKey(level, column, row));
        assertThat(tile.width).isEqualTo(Math.min(TileKey.SIZE, width - column * TileKey.SIZE));
        assertThat(tile.height).isEqualTo(Math.min(TileKey.SIZE, height - row * TileKey.SIZE));
        int wrong = 0;
        for (int i = 0; i < tile.samples.length; i++) {
          int x = column * TileKey.SIZE * bands + i % (tile.width * bands);
          int y = row * TileKey.SIZE + i / (tile.width * bands);
          wrong += tile.samples[i] == pixels[y * width * bands + x] ? 0 : 1;
        }
        assertThat(wrong).isZero();
        count++;
      }
    }
    return count;
  }

  private static byte[] halved(byte[] pixels, int width, int height, int bands) {
    int w = LevelBuilder.half(width);
    int h = LevelBuilder.half(height);
    byte[] half = new byte[w * h * bands];
    for (int i = 0; i < half.length; i++) {
      int band = i % bands;
      int x = i / bands % w;
      int y = i / bands / w;
      double sum = 0;
      int count = 0;
      for (int dy = 0; dy < 2 && 2 * y + dy < height; dy++) {
        for (int dx = 0; dx < 2 && 2 * x + dx < width; dx++) {
          sum += pixels[((2 * y + dy) * width + 2 * x + dx) * bands + band] & 0xFF;
          count++;
        }
      }
      half[i] = (byte) Math.floor(sum / count + 0.5);
    }
    return half;
  }

  private static Map<TileKey, Tile> build(byte[] pixels, int width, int height, int bands)
      throws IOException {
    Map<TileKey, Tile> tiles = new HashMap<>();
    LevelBuilder builder =
        new LevelBuilder(
            0,
            width,
            height,
            bands,
            (key, w, h, samples) -> tiles.put(key, new Tile(w, h, samples)));
    byte[] row = new byte[width * bands];
    for (int y = 0; y < height; y++) {
      System.arraycopy(pixels, y * row.length, row, 0, row.length);
      builder.row(y, row);
    }
    return tiles;
  }
}
