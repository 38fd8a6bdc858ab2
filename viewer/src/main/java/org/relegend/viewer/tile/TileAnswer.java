package org.relegend.viewer.tile;

import java.awt.image.BufferedImage;

/** What comes of asking for a tile: it never waits. */
public sealed interface TileAnswer {
  /** Here it is; nobody may draw into it. */
  record Ready(BufferedImage image) implements TileAnswer {}

  /** Not here yet: listeners hear when it is. */
  record Pending() implements TileAnswer {}

  /** It can't be had; the reason is a sentence for people. */
  record Failed(String reason) implements TileAnswer {}
}
