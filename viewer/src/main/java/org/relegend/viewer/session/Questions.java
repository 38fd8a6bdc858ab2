package org.relegend.viewer.session;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The one question that waits for the technician; asking another drops it. */
final class Questions {
  private final Hub hub;
  private @Nullable Question asked;

  Questions(Hub hub) {
    this.hub = hub;
  }

  Optional<Question> asked() {
    return Optional.ofNullable(asked);
  }

  void ask(Question question) {
    asked = question;
    hub.fire(Change.QUESTION);
  }

  void drop() {
    if (asked != null) {
      asked = null;
      hub.fire(Change.QUESTION);
    }
  }
}
