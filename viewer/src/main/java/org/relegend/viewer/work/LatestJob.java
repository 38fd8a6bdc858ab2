package org.relegend.viewer.work;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Work of which only the latest counts: whatever was begun before is cancelled, so that its outcome
 * is never delivered. Belongs to the thread that outcomes are handed to.
 */
public final class LatestJob {
  private final Jobs jobs;
  private @Nullable Job running;

  /** Nothing runs yet. */
  public LatestJob(Jobs jobs) {
    this.jobs = jobs;
  }

  /** Runs work in the place of what was begun before; as {@link Jobs#run}. */
  public <T> Job run(
      String label, Jobs.Work<T> work, Consumer<T> done, Consumer<Throwable> failed) {
    cancel();
    Job job = jobs.run(label, work, done, failed);
    running = job;
    return job;
  }

  /** Gives up what was begun last, if it still runs. */
  public void cancel() {
    if (running != null) {
      running.cancel();
      running = null;
    }
  }
}
