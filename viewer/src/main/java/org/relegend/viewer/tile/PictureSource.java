package org.relegend.viewer.tile;

import java.util.List;

/**
 * One picture, in tiles. Nothing here waits: reading happens elsewhere. All methods may be called
 * on any thread; listeners are called on the hand-over thread of the {@link PictureLibrary}.
 */
public interface PictureSource {
  /** Picture units, as stored in the map. */
  double width();

  double height();

  /** The most detailed level there is; see {@link TileKey}. */
  int finestLevel();

  /** The level at which the whole picture is one tile. */
  int coarsestLevel();

  /** Component pixels per picture unit that count as 1:1 on an ordinary screen. */
  double actualScale();

  PictureStatus status();

  /** The tile if it is at hand. A pending one isn't fetched unless someone {@link #want}s it. */
  TileAnswer tile(TileKey key);

  /**
   * What one viewer needs next, most urgent first; replaces what the same viewer wanted before, so
   * that nobody works for a view that is gone.
   *
   * @param viewer any object that stands for the one who asks
   */
  void want(Object viewer, List<TileKey> tiles);

  /** Hears of every tile that arrived and every change of status, until removed. */
  void addListener(Runnable listener);

  void removeListener(Runnable listener);

  /** Stops a long first reading. */
  void stop();
}
