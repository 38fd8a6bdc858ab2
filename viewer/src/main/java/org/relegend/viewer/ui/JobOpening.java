package org.relegend.viewer.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.bench.Job;
import org.relegend.bench.MapLink;
import org.relegend.store.JobFolder;
import org.relegend.store.JobMap;
import org.relegend.store.MapFolder;
import org.relegend.store.MapFormat;
import org.relegend.store.StoreException;

/**
 * What was opened: a map, or a job with the map it lies over.
 *
 * @param job empty where a map was opened alone
 */
record JobOpening(MapFolder map, Optional<JobFolder> job) {
  /**
   * Opens a folder of either kind; to be called off the event thread.
   *
   * @throws StoreException where it is neither, or the job's map can't be found; nothing stays
   *     locked then
   */
  static JobOpening of(Path folder) throws StoreException {
    if (!JobFolder.isJob(folder)) {
      return new JobOpening(MapFolder.open(folder), Optional.empty());
    }
    JobFolder job = JobFolder.open(folder);
    try {
      return new JobOpening(MapFolder.open(JobMap.of(job)), Optional.of(job));
    } catch (StoreException trouble) {
      try {
        job.close();
      } catch (StoreException second) {
        trouble.addSuppressed(second);
      }
      throw trouble;
    }
  }

  /** Makes a job over a map that stays open. */
  static JobFolder create(Path folder, MapFolder map) throws StoreException {
    Path whole = folder.toAbsolutePath().normalize();
    MapLink link =
        new MapLink(
            map.map().id(),
            MapFormat.digest(map.map()),
            map.map().info().title(),
            JobFolder.place(folder, map.path()));
    Path name = whole.getFileName();
    String id = name == null ? "job" : name.toString().replaceAll("[^A-Za-z0-9._-]+", "-");
    return JobFolder.create(folder, Job.empty(id, link));
  }

  /** What one should know of how both were opened. */
  List<String> notices() {
    List<String> notices = new ArrayList<>(map.notices());
    job.ifPresent(
        open -> {
          notices.addAll(open.notices());
          String digest = MapFormat.digest(map.map());
          if (!open.job().map().digest().equals(digest)) {
            notices.add(Texts.of("job.mapchanged"));
          }
        });
    return notices;
  }
}
