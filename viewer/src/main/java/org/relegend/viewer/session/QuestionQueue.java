package org.relegend.viewer.session;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** The questions that wait for the technician, asked one after the other. */
public final class QuestionQueue {
  private final ChangeNotifier hub;
  private final Deque<Question> waiting = new ArrayDeque<>();

  public QuestionQueue(ChangeNotifier hub) {
    this.hub = hub;
  }

  public Optional<Question> asked() {
    return Optional.ofNullable(waiting.peek());
  }

  public void ask(Question question) {
    waiting.add(question);
    hub.fire(Change.QUESTION);
  }

  /** The one asked was answered: what was said before it is over. */
  public void answered() {
    hub.check();
    hub.moveOn();
    done();
  }

  /** The one asked was answered, or is given up. */
  public void done() {
    waiting.poll();
    hub.fire(Change.QUESTION);
  }

  public void dropAll() {
    if (!waiting.isEmpty()) {
      waiting.clear();
      hub.fire(Change.QUESTION);
    }
  }
}
