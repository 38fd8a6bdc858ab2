package org.relegend.store;

import java.nio.file.Files;
import java.nio.file.Path;
import org.relegend.bench.MapLink;
import org.relegend.store.StoreException.Kind;

/** Finds the map that a job lies over, from the place the job remembers. */
public final class JobMap {
  private JobMap() {}

  /**
   * The map's folder.
   *
   * @throws StoreException where there is no map, or another than the job's
   */
  public static Path of(JobFolder job) throws StoreException {
    MapLink link = job.job().map();
    Path folder = job.mapPlace();
    if (!Files.isRegularFile(folder.resolve(MapFolder.MAP_FILE))) {
      throw new StoreException(
          Kind.MISSING,
          job.path(),
          "the job lies over the map \"%s\", which isn't at %s any more. Put it back there."
              .formatted(link.title(), folder));
    }
    String found = MapFolder.openReadOnly(folder).map().id();
    if (!found.equals(link.id())) {
      throw new StoreException(
          Kind.BAD_CONTENT,
          job.path(),
          "the job lies over the map %s, but at %s there is the map %s. Put the right one there."
              .formatted(link.id(), folder, found));
    }
    return folder;
  }
}
