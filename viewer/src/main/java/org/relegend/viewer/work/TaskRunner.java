package org.relegend.viewer.work;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/**
 * Runs work on threads of its own and hands the outcome over to the thread that owns the screen.
 * The threads are daemons: they never keep the program from ending.
 */
public final class TaskRunner implements AutoCloseable {
  /** Work that reports how far it is, and stops when told to. */
  @FunctionalInterface
  public interface Work<T> {
    /**
     * Does it.
     *
     * @throws Exception whatever went wrong; delivered to the one who waits
     */
    T run(TaskMonitor watch) throws Exception;
  }

  private final ExecutorService threads;
  private final Executor handOver;

  /**
   * Starts no thread yet.
   *
   * @param name of the threads
   * @param count of threads: one keeps the jobs in their order
   * @param handOver where outcomes are delivered: {@code SwingUtilities::invokeLater}
   */
  public TaskRunner(String name, int count, Executor handOver) {
    AtomicInteger number = new AtomicInteger();
    this.threads =
        Executors.newFixedThreadPool(
            count,
            work -> {
              Thread thread = new Thread(work, name + "-" + number.incrementAndGet());
              thread.setDaemon(true);
              return thread;
            });
    this.handOver = handOver;
  }

  /**
   * Runs work; exactly one of the two is called at the end, on the hand-over thread, unless the job
   * was cancelled, when none is.
   */
  public <T> BackgroundTask run(
      String label, Work<T> work, Consumer<T> done, Consumer<Throwable> failed) {
    TaskMonitor watch = new TaskMonitor(label);
    threads.execute(() -> deliver(watch, () -> work.run(watch), done, failed));
    return watch;
  }

  private <T> void deliver(
      TaskMonitor watch, Callable<T> work, Consumer<T> done, Consumer<Throwable> failed) {
    outcome(watch, work, done, failed)
        .ifPresent(
            outcome ->
                handOver.execute(
                    () -> {
                      if (!watch.cancelled()) {
                        outcome.run();
                      }
                    }));
  }

  /** The top of a job: whatever goes wrong in it is told to the one who waits. */
  private static <T> Optional<Runnable> outcome(
      TaskMonitor watch, Callable<T> work, Consumer<T> done, Consumer<Throwable> failed) {
    try {
      watch.check();
      T result = work.call();
      return Optional.of(() -> done.accept(result));
    } catch (CancellationException stopped) {
      watch.cancel();
      return Optional.empty();
    } catch (Exception | OutOfMemoryError | StackOverflowError problem) {
      return Optional.of(() -> failed.accept(problem));
    } finally {
      watch.end();
    }
  }

  /** Starts nothing more; what runs may finish. */
  @Override
  public void close() {
    threads.shutdown();
  }
}
