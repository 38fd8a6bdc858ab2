package org.relegend.viewer.work;

import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Work of which only the latest counts: whatever was begun before is cancelled, so that its outcome
 * is never delivered. Belongs to the thread that outcomes are handed to.
 */
public final class LatestJob {
  private final TaskRunner jobs;
  private @Nullable BackgroundTask begun;

  /** Nothing is begun yet. */
  public LatestJob(TaskRunner jobs) {
    this.jobs = jobs;
  }

  /** Runs work in the place of what was begun before; as {@link TaskRunner#run}. */
  public <T> BackgroundTask run(
      String label, TaskRunner.Work<T> work, Consumer<T> done, Consumer<Throwable> failed) {
    cancel();
    BackgroundTask job = jobs.run(label, work, done, failed);
    begun = job;
    return job;
  }

  /** What was begun last, over or not, unless it was given up. */
  public Optional<BackgroundTask> begun() {
    return Optional.ofNullable(begun);
  }

  /** Whether what was begun last still runs. */
  public boolean isRunning() {
    return begun().filter(job -> !job.over()).isPresent();
  }

  /** Gives up what was begun last. */
  public void cancel() {
    if (begun != null) {
      begun.cancel();
      begun = null;
    }
  }
}
