package org.relegend.viewer.session;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** The questions that wait for the technician, asked one after the other. */
final class Questions {
  private final Hub hub;
  private final Deque<Question> waiting = new ArrayDeque<>();

  Questions(Hub hub) {
    this.hub = hub;
  }

  Optional<Question> asked() {
    return Optional.ofNullable(waiting.peek());
  }

  void ask(Question question) {
    waiting.add(question);
    hub.fire(Change.QUESTION);
  }

  /** The one asked was answered, or is given up. */
  void done() {
    waiting.poll();
    hub.fire(Change.QUESTION);
  }

  void dropAll() {
    if (!waiting.isEmpty()) {
      waiting.clear();
      hub.fire(Change.QUESTION);
    }
  }
}
