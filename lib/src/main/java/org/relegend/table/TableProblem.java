package org.relegend.table;

/**
 * One thing that is wrong with a table.
 *
 * @param file the table's name
 * @param line where the row begins, counted from 1 as editors do; 0 where the whole file is meant
 * @param column the column's name; empty where the whole row is meant
 * @param message what is wrong and what was expected
 */
public record TableProblem(String file, int line, String column, String message) {
  @Override
  public String toString() {
    return where() + ": " + message;
  }

  /** File, line and column, as far as there are any. */
  public String where() {
    StringBuilder text = new StringBuilder(file);
    if (line > 0) {
      text.append(", line ").append(line);
    }
    if (!column.isEmpty()) {
      text.append(", column ").append(column);
    }
    return text.toString();
  }
}
