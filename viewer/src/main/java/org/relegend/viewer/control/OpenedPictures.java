package org.relegend.viewer.control;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.viewer.tile.PictureLibrary;
import org.relegend.viewer.tile.PictureSource;

/** The opened pictures of one map: each is opened once, whoever shows it. */
public final class OpenedPictures {
  private record Opened(Picture picture, PictureSource source) {}

  private final PictureLibrary library;
  private final Path folder;
  private final Map<PictureId, Opened> opened = new HashMap<>();
  private @Nullable Path job;
  private Predicate<PictureId> ofJob = picture -> false;

  public OpenedPictures(PictureLibrary library, Path folder) {
    this.library = library;
    this.folder = folder;
  }

  /** The picture's source; opened anew where the picture's file or size is another now. */
  public PictureSource of(Picture picture) {
    Opened known = opened.get(picture.id());
    if (known == null || !sameFile(known.picture(), picture)) {
      known = new Opened(picture, library.open(picture, folderOf(picture)));
      opened.put(picture.id(), known);
    }
    return known.source();
  }

  /** Some pictures are those of a job, and lie in its folder. */
  public void also(Path job, Predicate<PictureId> ofJob) {
    this.job = job;
    this.ofJob = ofJob;
  }

  private Path folderOf(Picture picture) {
    Path other = job;
    return other != null && ofJob.test(picture.id()) ? other : folder;
  }

  /** The map's folder. */
  public Path folder() {
    return folder;
  }

  /** Where the picture's file is. */
  public Path fileOf(Picture picture) {
    return folderOf(picture).resolve(picture.file());
  }

  private static boolean sameFile(Picture a, Picture b) {
    return a.file().equals(b.file())
        && a.sha256().equals(b.sha256())
        && a.width() == b.width()
        && a.height() == b.height();
  }
}
