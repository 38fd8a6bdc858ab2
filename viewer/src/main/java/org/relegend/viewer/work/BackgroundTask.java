package org.relegend.viewer.work;

/** One piece of work that was handed over, seen from the one who waits for it. */
public interface BackgroundTask {
  /** What a person reads beside the progress. */
  String label();

  /** Done, from 0 to 1. */
  double fraction();

  /** Asks it to stop; neither result nor failure is delivered after that. */
  void cancel();

  /** Whether it ended: with a result, a failure or cancelled. */
  boolean over();
}
