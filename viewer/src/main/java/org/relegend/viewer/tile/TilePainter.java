package org.relegend.viewer.tile;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.map.Box;
import org.relegend.viewer.view.ViewState;

/** Paints a picture from the tiles at hand, coarser ones standing in for those that are missing. */
public final class TilePainter {
  private TilePainter() {}

  /**
   * Paints what the clip shows.
   *
   * @param g in component pixels, perhaps scaled for a screen of finer pixels
   * @param smooth false for speed
   */
  public static void paint(Graphics2D g, PictureSource picture, ViewState view, boolean smooth) {
    Rectangle clip = g.getClipBounds();
    if (clip == null) {
      clip = new Rectangle(view.width(), view.height());
    }
    Graphics2D own = (Graphics2D) g.create();
    try {
      own.setRenderingHint(
          RenderingHints.KEY_INTERPOLATION,
          smooth
              ? RenderingHints.VALUE_INTERPOLATION_BILINEAR
              : RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR);
      AffineTransform device = own.getTransform();
      AffineTransform all = new AffineTransform(device);
      all.concatenate(view.transform());
      Box seen = view.seenIn(clip.x, clip.y, clip.width, clip.height);
      for (TileKey key : keys(picture, view, seen, device.getScaleX())) {
        paint(own, all, picture, key);
      }
    } finally {
      own.dispose();
    }
  }

  /**
   * The tiles that a view needs, most urgent first: those in the middle, and before them one of the
   * whole picture while there is none.
   *
   * @param margin how far beyond the component to look as well, in component pixels
   * @param deviceScale screen pixels per component pixel
   */
  public static List<TileKey> needed(
      PictureSource picture, ViewState view, double margin, double deviceScale) {
    List<TileKey> keys = new ArrayList<>();
    TileKey whole = new TileKey(picture.coarsestLevel(), 0, 0);
    if (!(picture.tile(whole) instanceof TileAnswer.Ready)) {
      keys.add(whole);
    }
    keys.addAll(keys(picture, view, view.visible().grown(margin / view.scale()), deviceScale));
    return List.copyOf(keys);
  }

  private static List<TileKey> keys(
      PictureSource picture, ViewState view, Box seen, double deviceScale) {
    TileGrid grid = new TileGrid(picture.width(), picture.height(), picture.finestLevel());
    return grid.covering(
        seen, Math.min(grid.levelFor(view.scale() * deviceScale), picture.coarsestLevel()));
  }

  /** What stands for a tile at the moment: itself, a coarser one, or nothing. */
  public static Optional<BufferedImage> standsFor(PictureSource picture, TileKey key) {
    return standIn(picture, key).map(StandIn::image);
  }

  private record StandIn(TileKey key, BufferedImage image) {}

  private static Optional<StandIn> standIn(PictureSource picture, TileKey key) {
    for (TileKey tile = key; tile.level() <= picture.coarsestLevel(); tile = tile.coarser()) {
      if (picture.tile(tile) instanceof TileAnswer.Ready ready) {
        return Optional.of(new StandIn(tile, ready.image()));
      }
    }
    return Optional.empty();
  }

  private static void paint(
      Graphics2D g, AffineTransform toDevice, PictureSource picture, TileKey key) {
    standIn(picture, key).ifPresent(found -> paintPart(g, toDevice, found, key));
  }

  /** The part of a coarse tile that lies where a finer one is missing. */
  private static void paintPart(
      Graphics2D g, AffineTransform toDevice, StandIn found, TileKey missing) {
    TileKey coarse = found.key;
    BufferedImage image = found.image;
    double times = coarse.unit() / missing.unit();
    int side = (int) Math.max(1, TileKey.SIZE / times);
    int x = (int) ((missing.area().left() - coarse.area().left()) / coarse.unit());
    int y = (int) ((missing.area().top() - coarse.area().top()) / coarse.unit());
    int right = Math.min(image.getWidth(), x + side);
    int bottom = Math.min(image.getHeight(), y + side);
    if (right <= x || bottom <= y) {
      return;
    }
    g.setTransform(toDevice);
    g.translate(coarse.area().left(), coarse.area().top());
    g.scale(coarse.unit(), coarse.unit());
    if (right - x == image.getWidth() && bottom - y == image.getHeight()) {
      g.drawImage(image, 0, 0, null);
    } else {
      g.drawImage(image, x, y, right, bottom, x, y, right, bottom, null);
    }
  }
}
