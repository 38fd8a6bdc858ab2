package org.relegend.viewer.command;

/** Why a command gives no answer: its message is the one line printed. */
final class CommandFailure extends Exception {
  private static final long serialVersionUID = 1L;

  private final int code;

  /** Wrong use or unreadable input: the exit code is {@link ExitCode#REFUSED}. */
  CommandFailure(String message) {
    this(message, ExitCode.REFUSED);
  }

  private CommandFailure(String message, int code) {
    super(message);
    this.code = code;
  }

  /** The input is as it should be, but what was asked of it does not hold. */
  static CommandFailure doesNotHold(String message) {
    return new CommandFailure(message, ExitCode.DOES_NOT_HOLD);
  }

  int code() {
    return code;
  }
}
