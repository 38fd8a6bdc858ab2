package org.relegend.viewer.mode.bench;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.relegend.bench.Job;
import org.relegend.store.JobFolder;
import org.relegend.store.StoreException;
import org.relegend.viewer.work.TaskRunner;

/** Saves the open job after every edit, off the event thread, in order. */
public final class JobAutosave {
  private final JobFolder folder;
  private final TaskRunner jobs;
  private final Consumer<Throwable> failed;

  /** What could not be saved, until a later save can; on the saving thread alone. */
  private @Nullable Job unsaved;

  /**
   * @param jobs with one thread, so that saves keep their order
   */
  public JobAutosave(JobFolder folder, TaskRunner jobs, Consumer<Throwable> failed) {
    this.folder = folder;
    this.jobs = jobs;
    this.failed = failed;
  }

  public JobFolder folder() {
    return folder;
  }

  public void keep(Job job) {
    jobs.run(
        folder.path().toString(),
        watch -> {
          save(job);
          return job;
        },
        saved -> {},
        failed);
  }

  private void save(Job job) throws StoreException {
    unsaved = job;
    folder.save(job);
    unsaved = null;
  }

  /**
   * Lets go of the folder once all is saved, what failed before tried again; then runs this, on the
   * event thread.
   */
  public void release(Runnable then) {
    jobs.run(
        folder.path().toString(),
        watch -> {
          try {
            Job last = unsaved;
            if (last != null) {
              save(last);
            }
          } finally {
            folder.close();
          }
          return folder;
        },
        closed -> then.run(),
        problem -> {
          failed.accept(problem);
          then.run();
        });
  }
}
