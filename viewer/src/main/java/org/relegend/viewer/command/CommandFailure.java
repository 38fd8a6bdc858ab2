package org.relegend.viewer.command;

/** Wrong use or unreadable input: its message is the one line printed; the exit code is 2. */
final class CommandFailure extends Exception {
  private static final long serialVersionUID = 1L;

  CommandFailure(String message) {
    super(message);
  }
}
