package org.relegend.table;

import java.util.List;
import org.apache.commons.csv.CSVFormat;

/** Rows as the text of a table (RFC 4180), the names of its columns first. */
public final class TableRows {
  private static final String END = "\r\n";

  private final StringBuilder text = new StringBuilder();
  private final int columns;

  public TableRows(List<String> columns) {
    this.columns = columns.size();
    row(columns.toArray(String[]::new));
  }

  /** Adds a row with a cell for each column. */
  public void row(String... cells) {
    if (cells.length != columns) {
      throw new IllegalArgumentException(
          "%d cells for %d columns".formatted(cells.length, columns));
    }
    text.append(CSVFormat.RFC4180.format((Object[]) cells)).append(END);
  }

  /** All rows so far. */
  public String text() {
    return text.toString();
  }
}
