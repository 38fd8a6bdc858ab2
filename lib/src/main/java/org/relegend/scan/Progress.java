package org.relegend.scan;

/** Hears how far a long piece of work is, and says whether it should go on. */
@FunctionalInterface
public interface Progress {
  /** Goes on always. */
  Progress UNWATCHED = fraction -> true;

  /**
   * Called now and then on the working thread.
   *
   * @param fraction done, 0 to 1
   * @return false to stop the work, which then throws {@link
   *     java.util.concurrent.CancellationException}
   */
  boolean at(double fraction);
}
