package org.relegend.viewer.ui;

import java.util.function.Consumer;
import org.relegend.bench.Job;
import org.relegend.store.JobFolder;
import org.relegend.viewer.work.Jobs;

/** Saves the open job after every edit, off the event thread, in order. */
final class JobKeeping {
  private final JobFolder folder;
  private final Jobs jobs;
  private final Consumer<Throwable> failed;

  /**
   * @param jobs with one thread, so that saves keep their order
   */
  JobKeeping(JobFolder folder, Jobs jobs, Consumer<Throwable> failed) {
    this.folder = folder;
    this.jobs = jobs;
    this.failed = failed;
  }

  JobFolder folder() {
    return folder;
  }

  void keep(Job job) {
    jobs.run(
        folder.path().toString(),
        watch -> {
          folder.save(job);
          return job;
        },
        saved -> {},
        failed);
  }

  /** Lets go of the folder once all is saved; then runs this, on the event thread. */
  void release(Runnable then) {
    jobs.run(
        folder.path().toString(),
        watch -> {
          folder.close();
          return folder;
        },
        closed -> then.run(),
        problem -> {
          failed.accept(problem);
          then.run();
        });
  }
}
