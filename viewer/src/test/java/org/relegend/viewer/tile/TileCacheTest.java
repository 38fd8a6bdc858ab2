package org.relegend.viewer.tile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TileCacheTest {
  private static final Object PICTURE = "picture";

  @Test
  void put_beyondTheBound_forgetsWhatWasNotAskedForTheLongest() {
    TileCache cache = new TileCache(3 * 4 * 100);
    for (int i = 0; i < 3; i++) {
      cache.put(PICTURE, key(i), image(10, 10));
    }
    cache.get(PICTURE, key(0));

    cache.put(PICTURE, key(3), image(10, 10));

    assertThat(cache.get(PICTURE, key(1))).isEmpty();
    assertThat(cache.get(PICTURE, key(0))).isPresent();
    assertThat(cache.get(PICTURE, key(3))).isPresent();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void anySteps_stayWithinTheBoundAndReturnWhatWasPut(long seed) {
    Random random = new Random(seed);
    long bound = 200_000;
    TileCache cache = new TileCache(bound);
    Map<String, BufferedImage> model = new LinkedHashMap<>();
    for (int i = 0; i < 2000; i++) {
      Object picture = "p" + random.nextInt(3);
      TileKey key = key(random.nextInt(50));
      if (random.nextInt(100) == 0) {
        cache.forget(picture);
        model.keySet().removeIf(name -> name.startsWith(picture + "/"));
      } else if (random.nextBoolean()) {
        BufferedImage image = image(1 + random.nextInt(100), 1 + random.nextInt(100));
        cache.put(picture, key, image);
        model.put(picture + "/" + key, image);
      } else {
        BufferedImage expected = model.get(picture + "/" + key);
        cache.get(picture, key).ifPresent(found -> assertThat(found).isSameAs(expected));
      }
      assertThat(cache.bytes()).isBetween(0L, bound);
    }
  }

  @Test
  void onlyTile_isKeptIfItFits() {
    TileCache cache = new TileCache(4 * 512 * 512);
    BufferedImage one = image(512, 512);

    cache.put(PICTURE, key(0), one);

    assertThat(cache.get(PICTURE, key(0))).containsSame(one);
    cache.forget(PICTURE);
    assertThat(cache.bytes()).isZero();
  }

  @Test
  void boundOfNothing_isRefused() {
    assertThatThrownBy(() -> new TileCache(0)).hasMessageContaining("0 bytes");
  }

  private static TileKey key(int column) {
    return new TileKey(0, column, 0);
  }

  private static BufferedImage image(int width, int height) {
    return new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
  }
}
