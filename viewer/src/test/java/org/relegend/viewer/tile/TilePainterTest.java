package org.relegend.viewer.tile;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.Box;
import org.relegend.map.Point;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ScreenPoint;
import org.relegend.viewer.view.ViewState;

class TilePainterTest {
  /** A picture all of whose tiles are at hand unless they were taken away. */
  private static final class Given implements PictureSource {
    private final Map<TileKey, BufferedImage> tiles = new HashMap<>();
    private final TileGrid grid;

    Given(BufferedImage image) {
      grid = new TileGrid(image.getWidth(), image.getHeight(), 0);
      for (int level = 0; level <= grid.coarsest(); level++) {
        for (TileKey key : grid.covering(new Box(0, 0, grid.width(), grid.height()), level)) {
          tiles.put(key, cut(image, key));
        }
      }
    }

    private BufferedImage cut(BufferedImage image, TileKey key) {
      BufferedImage tile =
          new BufferedImage(grid.tileWidth(key), grid.tileHeight(key), BufferedImage.TYPE_INT_RGB);
      Graphics2D g = tile.createGraphics();
      g.setRenderingHint(
          RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
      g.scale(1 / key.unit(), 1 / key.unit());
      g.translate(-key.area().left(), -key.area().top());
      g.drawImage(image, 0, 0, null);
      g.dispose();
      return tile;
    }

    @Override
    public double width() {
      return grid.width();
    }

    @Override
    public double height() {
      return grid.height();
    }

    @Override
    public int finestLevel() {
      return 0;
    }

    @Override
    public int coarsestLevel() {
      return grid.coarsest();
    }

    @Override
    public double actualScale() {
      return 1;
    }

    @Override
    public PictureStatus status() {
      return new PictureStatus.Ready();
    }

    @Override
    public TileAnswer tile(TileKey key) {
      BufferedImage tile = tiles.get(key);
      return tile == null ? new TileAnswer.Pending() : new TileAnswer.Ready(tile);
    }

    @Override
    public void want(Object viewer, List<TileKey> wanted) {}

    @Override
    public void addListener(Runnable listener) {}

    @Override
    public void removeListener(Runnable listener) {}

    @Override
    public void stop() {}
  }

  /** Between tiles nothing of the ground may shine through, at any scale and turn. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  void whitePicture_hasNoCracks(long seed) {
    Random random = new Random(seed);
    Given picture = new Given(plain(1900, 1700));
    Orientation orientation =
        new Orientation(
            random.nextInt(4), random.nextBoolean(), seed % 2 == 0 ? 0 : random.nextDouble() * 10);
    ViewState view =
        ViewState.fit(1900, 1700, 400, 300, orientation)
            .centredOn(new Point(950, 850), 0.4 + 1.5 * random.nextDouble());

    for (boolean smooth : new boolean[] {false, true}) {
      BufferedImage screen = painted(picture, view, smooth);
      int dark = 0;
      for (int y = 0; y < 300; y++) {
        for (int x = 0; x < 400; x++) {
          dark += (screen.getRGB(x, y) & 0xFF) < 250 ? 1 : 0;
        }
      }
      assertThat(dark).as("pixels of the ground, smooth: %s", smooth).isZero();
    }
  }

  /** Marks are placed by the view's transform, so pixels must be, too: to half a pixel. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void spots_areSeenWhereTheViewSays(long seed) {
    Random random = new Random(seed);
    BufferedImage image = plain(1500, 1200);
    Point spot = new Point(300 + random.nextInt(900), 300 + random.nextInt(600));
    Graphics2D g = image.createGraphics();
    g.setColor(Color.BLACK);
    g.fillRect((int) spot.x() - 12, (int) spot.y() - 12, 24, 24);
    g.dispose();
    Orientation orientation =
        new Orientation(random.nextInt(4), random.nextBoolean(), 20 * random.nextDouble() - 10);
    ViewState view =
        ViewState.fit(1500, 1200, 500, 500, orientation)
            .centredOn(spot.plus(20 * random.nextDouble(), 5), 0.5 + 3 * random.nextDouble());

    BufferedImage screen = painted(new Given(image), view, true, Color.WHITE);

    ScreenPoint seen = darkMiddle(screen);
    assertThat(seen.distance(view.toScreen(spot))).isLessThan(0.75);
  }

  @Test
  void missingTiles_areStoodInForByCoarserOnes() {
    Given picture = new Given(plain(1900, 1700));
    picture.tiles.keySet().removeIf(key -> key.level() < 2);
    ViewState view = ViewState.fit(1900, 1700, 400, 300, Orientation.UPRIGHT);
    view = view.centredOn(new Point(900, 900), 1);

    BufferedImage screen = painted(picture, view, true);

    assertThat(screen.getRGB(200, 150) & 0xFF).isGreaterThan(250);
    assertThat(TilePainter.needed(picture, view, 0, 1)).allMatch(key -> key.level() == 0);
    assertThat(TilePainter.needed(picture, view, 0, 0.5)).allMatch(key -> key.level() == 1);
  }

  @Test
  void needed_beginsWithTheWholeWhileThereIsNothing_thenFromTheMiddle() {
    Given picture = new Given(plain(1900, 1700));
    ViewState view =
        ViewState.fit(1900, 1700, 900, 900, Orientation.UPRIGHT).centredOn(new Point(768, 768), 1);
    assertThat(TilePainter.needed(picture, view, 0, 1).get(0)).isEqualTo(new TileKey(0, 1, 1));

    picture.tiles.clear();

    assertThat(TilePainter.needed(picture, view, 0, 1).get(0)).isEqualTo(new TileKey(2, 0, 0));
    assertThat(TilePainter.standsFor(picture, new TileKey(0, 1, 1))).isEmpty();
  }

  private static BufferedImage plain(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, width, height);
    g.dispose();
    return image;
  }

  private static BufferedImage painted(PictureSource picture, ViewState view, boolean smooth) {
    return painted(picture, view, smooth, Color.BLACK);
  }

  private static BufferedImage painted(
      PictureSource picture, ViewState view, boolean smooth, Color ground) {
    BufferedImage screen =
        new BufferedImage(view.width(), view.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = screen.createGraphics();
    g.setColor(ground);
    g.fillRect(0, 0, view.width(), view.height());
    g.setClip(0, 0, view.width(), view.height());
    TilePainter.paint(g, picture, view, smooth);
    g.dispose();
    return screen;
  }

  private static ScreenPoint darkMiddle(BufferedImage screen) {
    double x = 0;
    double y = 0;
    double sum = 0;
    for (int py = 0; py < screen.getHeight(); py++) {
      for (int px = 0; px < screen.getWidth(); px++) {
        double dark = 255 - (screen.getRGB(px, py) & 0xFF);
        x += dark * (px + 0.5);
        y += dark * (py + 0.5);
        sum += dark;
      }
    }
    return new ScreenPoint(x / sum, y / sum);
  }
}
