package org.relegend.viewer.tile;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** A small picture that is in memory already: previews, drawn examples. */
public final class MemorySource implements PictureSource {
  private final BufferedImage image;
  private final Map<TileKey, TileAnswer> tiles = new ConcurrentHashMap<>();

  public MemorySource(BufferedImage image) {
    this.image = image;
  }

  @Override
  public double width() {
    return image.getWidth();
  }

  @Override
  public double height() {
    return image.getHeight();
  }

  @Override
  public int finestLevel() {
    return 0;
  }

  @Override
  public int coarsestLevel() {
    return 0;
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
    return tiles.computeIfAbsent(key, this::cut);
  }

  private TileAnswer cut(TileKey key) {
    int x = key.column() * TileKey.SIZE;
    int y = key.row() * TileKey.SIZE;
    int w = Math.min(TileKey.SIZE, image.getWidth() - x);
    int h = Math.min(TileKey.SIZE, image.getHeight() - y);
    if (key.level() != 0 || x < 0 || y < 0 || w <= 0 || h <= 0) {
      return new TileAnswer.Failed("There is no such piece of this picture.");
    }
    BufferedImage tile = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = tile.createGraphics();
    g.drawImage(image, -x, -y, null);
    g.dispose();
    return new TileAnswer.Ready(tile);
  }

  @Override
  public void want(Object viewer, List<TileKey> tiles) {}

  @Override
  public void addListener(Runnable listener) {}

  @Override
  public void removeListener(Runnable listener) {}

  @Override
  public void stop() {}
}
