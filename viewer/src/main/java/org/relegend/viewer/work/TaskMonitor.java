package org.relegend.viewer.work;

import java.util.concurrent.CancellationException;

/** Passed into work: how far it is, and whether it should stop. Any thread may call it. */
public final class TaskMonitor implements BackgroundTask {
  private final String label;
  private volatile double fraction;
  private volatile boolean cancelled;
  private volatile boolean over;

  public TaskMonitor(String label) {
    this.label = label;
  }

  /** Notes how far the work is; false where it should stop. */
  public boolean at(double done) {
    fraction = Math.max(0, Math.min(1, done));
    return !cancelled;
  }

  /**
   * For places in the work where stopping is easy.
   *
   * @throws CancellationException where it was cancelled
   */
  public void check() {
    if (cancelled) {
      throw new CancellationException(label);
    }
  }

  public boolean cancelled() {
    return cancelled;
  }

  void end() {
    over = true;
  }

  @Override
  public String label() {
    return label;
  }

  @Override
  public double fraction() {
    return fraction;
  }

  @Override
  public void cancel() {
    cancelled = true;
  }

  @Override
  public boolean over() {
    return over;
  }
}
