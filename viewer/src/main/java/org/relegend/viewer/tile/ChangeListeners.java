package org.relegend.viewer.tile;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;

/** Those who hear of changes, on the hand-over thread; many changes at once are told once. */
final class ChangeListeners {
  private final List<Runnable> all = new CopyOnWriteArrayList<>();
  private final Executor handOver;
  private final AtomicBoolean pending = new AtomicBoolean();

  ChangeListeners(Executor handOver) {
    this.handOver = handOver;
  }

  void add(Runnable listener) {
    all.add(listener);
  }

  void remove(Runnable listener) {
    all.remove(listener);
  }

  void tell() {
    if (pending.compareAndSet(false, true)) {
      handOver.execute(
          () -> {
            pending.set(false);
            all.forEach(Runnable::run);
          });
    }
  }
}
