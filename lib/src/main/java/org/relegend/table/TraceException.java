package org.relegend.table;

/** A typed line that can't be read; nothing was changed. */
public final class TraceException extends Exception {
  private static final long serialVersionUID = 1L;

  private final int start;
  private final int end;

  /**
   * Tells what is wrong with a stretch of the line.
   *
   * @param start first character of it, counted from 0
   * @param end the character after it
   */
  TraceException(int start, int end, String message) {
    super(message);
    this.start = start;
    this.end = end;
  }

  public int start() {
    return start;
  }

  public int end() {
    return end;
  }

  /** With the place in words, for those who see no cursor: "character 7: ...". */
  public String withPlace() {
    return "character %d: %s".formatted(start + 1, getMessage());
  }
}
