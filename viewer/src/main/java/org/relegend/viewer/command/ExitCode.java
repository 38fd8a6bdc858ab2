package org.relegend.viewer.command;

/** What a command's exit code says to who called it. */
public final class ExitCode {
  /** Everything asked held. */
  public static final int OK = 0;

  /** What was checked does not hold. */
  public static final int DOES_NOT_HOLD = 1;

  /** Wrong use, or input that can't be read: nothing was written. */
  public static final int REFUSED = 2;

  private ExitCode() {}
}
