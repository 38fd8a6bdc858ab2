package org.relegend.viewer.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.relegend.bench.Hypothesis;
import org.relegend.bench.Job;
import org.relegend.bench.MapLink;
import org.relegend.store.JobFolder;
import org.relegend.store.JobMap;
import org.relegend.store.MapFolder;
import org.relegend.store.MapFormat;
import org.relegend.store.StoreException;
import org.relegend.viewer.control.Messages;

/**
 * What was opened: a map, or a job with the map it lies over.
 *
 * @param job empty where a map was opened alone
 * @param before where one was when it was open last
 */
record OpenedFolder(MapFolder map, Optional<JobFolder> job, SavedView before) {
  /**
   * Opens a folder of either kind; to be called off the event thread.
   *
   * @param notes where is noted where one was in a map
   * @throws StoreException where it is neither, or the job's map can't be found; nothing stays
   *     locked then
   */
  static OpenedFolder of(Path folder, Path notes) throws StoreException {
    if (!JobFolder.isJob(folder)) {
      return new OpenedFolder(
          MapFolder.open(folder),
          Optional.empty(),
          SavedView.read(SavedViewWriter.fileOfMap(notes, folder)));
    }
    JobFolder job = JobFolder.open(folder);
    try {
      return new OpenedFolder(
          MapFolder.open(JobMap.of(job)),
          Optional.of(job),
          SavedView.read(folder.resolve(SavedView.FILE)));
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

  /** The hypothesis that was noted last and waits for its test. */
  private Optional<String> openQuestion(Job job) {
    List<Hypothesis> open =
        job.hypotheses().stream().filter(one -> one.result() == Hypothesis.Result.OPEN).toList();
    if (open.isEmpty()) {
      return Optional.empty();
    }
    Hypothesis last = open.get(open.size() - 1);
    String parts = last.parts().stream().map(map.map()::nameOf).collect(Collectors.joining(", "));
    String what = (parts + " " + last.what()).strip();
    return Optional.of(
        last.test().isEmpty()
            ? Messages.of("job.question", what)
            : Messages.of("job.question.test", what, last.test()));
  }

  /** The job that lay over a map opened alone, if it is still there. */
  Optional<Path> jobBefore() {
    return job.isEmpty() && !before.job().isEmpty()
        ? Optional.of(Path.of(before.job())).filter(JobFolder::isJob)
        : Optional.empty();
  }

  /** What one should know of how both were opened. */
  List<String> notices() {
    List<String> notices = new ArrayList<>(map.notices());
    job.ifPresent(
        open -> {
          notices.addAll(open.notices());
          String digest = MapFormat.digest(map.map());
          if (!open.job().map().digest().equals(digest)) {
            notices.add(Messages.of("job.mapchanged"));
          }
          openQuestion(open.job()).ifPresent(notices::add);
        });
    return notices;
  }
}
