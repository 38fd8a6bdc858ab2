package org.relegend.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Rows as the text of a table (RFC 4180), the names of its columns first. */
public final class TableRows {
  private final StringBuilder text = new StringBuilder();
  private final CSVPrinter printer;
  private final int columns;

  public TableRows(List<String> columns) {
    this.columns = columns.size();
    try {
      printer = new CSVPrinter(text, CSVFormat.RFC4180);
      printer.printRecord(columns);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory", e);
    }
  }

  /** Adds a row with a cell for each column. */
  public void row(String... cells) {
    if (cells.length != columns) {
      throw new IllegalArgumentException(
          "%d cells for %d columns".formatted(cells.length, columns));
    }
    try {
      printer.printRecord((Object[]) cells);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory", e);
    }
  }

  /** All rows so far. */
  public String text() {
    return text.toString();
  }
}
