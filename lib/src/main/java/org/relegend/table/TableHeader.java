package org.relegend.table;

import java.util.List;

/**
 * The first row of a table, and how its cells are divided.
 *
 * @param file the table's name
 * @param separator comma, semicolon or tab
 * @param columns names in small letters, in the order of the table
 */
public record TableHeader(String file, char separator, List<String> columns) {
  public TableHeader {
    columns = List.copyOf(columns);
  }

  int index(String column) {
    return columns.indexOf(column);
  }

  public boolean has(String column) {
    return columns.contains(column);
  }
}
