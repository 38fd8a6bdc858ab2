package org.relegend.viewer.session;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.relegend.viewer.work.OwnerThread;

/** Tells those who show a session what has changed, and keeps the last thing said. */
final class Hub {
  private final OwnerThread owner;
  private final List<Consumer<Change>> listeners = new CopyOnWriteArrayList<>();
  private @Nullable Notice last;

  Hub(OwnerThread owner) {
    this.owner = owner;
  }

  void check() {
    owner.check();
  }

  void add(Consumer<Change> listener) {
    listeners.add(listener);
  }

  void fire(Change change) {
    owner.check();
    listeners.forEach(listener -> listener.accept(change));
  }

  void say(Notice.Kind kind, Object... arguments) {
    last = Notice.of(kind, arguments);
    fire(Change.NOTICE);
  }

  /** Something else was begun: what didn't happen before, and what was to be done, is over. */
  void moveOn() {
    if (last().filter(said -> said.kind().isRefusal() || said.kind().isPrompt()).isPresent()) {
      last = null;
      fire(Change.NOTICE);
    }
  }

  Optional<Notice> last() {
    return Optional.ofNullable(last);
  }
}
