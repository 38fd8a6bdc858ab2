package org.relegend.viewer.ui;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.viewer.tile.PictureLibrary;
import org.relegend.viewer.tile.PictureSource;

/** The opened pictures of one map: each is opened once, whoever shows it. */
final class Shelf {
  private record Opened(Picture picture, PictureSource source) {}

  private final PictureLibrary library;
  private final Path folder;
  private final Map<PictureId, Opened> opened = new HashMap<>();

  Shelf(PictureLibrary library, Path folder) {
    this.library = library;
    this.folder = folder;
  }

  /** The picture's source; opened anew where the picture's file or size is another now. */
  PictureSource of(Picture picture) {
    Opened known = opened.get(picture.id());
    if (known == null || !sameFile(known.picture(), picture)) {
      known = new Opened(picture, library.open(picture, folder));
      opened.put(picture.id(), known);
    }
    return known.source();
  }

  /** Where the picture's file is. */
  Path fileOf(Picture picture) {
    return folder.resolve(picture.file());
  }

  private static boolean sameFile(Picture a, Picture b) {
    return a.file().equals(b.file())
        && a.sha256().equals(b.sha256())
        && a.width() == b.width()
        && a.height() == b.height();
  }
}
