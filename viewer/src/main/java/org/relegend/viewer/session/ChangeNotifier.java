package org.relegend.viewer.session;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.relegend.viewer.work.OwnerThread;

/** Tells those who show a session what has changed, and keeps the last thing said. */
public final class ChangeNotifier {
  private final OwnerThread owner;
  private final List<Consumer<Change>> listeners = new CopyOnWriteArrayList<>();
  private @Nullable Notice last;

  public ChangeNotifier(OwnerThread owner) {
    this.owner = owner;
  }

  public void check() {
    owner.check();
  }

  public void add(Consumer<Change> listener) {
    listeners.add(listener);
  }

  public void fire(Change change) {
    owner.check();
    listeners.forEach(listener -> listener.accept(change));
  }

  public void say(Notice.Kind kind, Object... arguments) {
    last = Notice.of(kind, arguments);
    fire(Change.NOTICE);
  }

  /** Something else was begun: what didn't happen before, and what was to be done, is over. */
  public void moveOn() {
    if (last()
        .filter(stated -> stated.kind().isRefusal() || stated.kind().isPrompt())
        .isPresent()) {
      last = null;
      fire(Change.NOTICE);
    }
  }

  public Optional<Notice> last() {
    return Optional.ofNullable(last);
  }
}
