package org.relegend.circuit;

import java.util.List;

/** A person's name for a node that means nothing, or more than one thing. */
public final class NodeNameException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<String> suggestions;

  NodeNameException(String message, List<String> suggestions) {
    super(message);
    this.suggestions = List.copyOf(suggestions);
  }

  /** Names that could have been meant, most likely first, each of which can be asked for. */
  public List<String> suggestions() {
    return suggestions;
  }
}
