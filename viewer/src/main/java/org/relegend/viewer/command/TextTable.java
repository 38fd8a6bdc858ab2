package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.relegend.map.NameRules;

/** Columns of text for people to read, each as wide as its widest cell. */
final class TextTable {
  private static final String GAP = "  ";

  private final List<List<String>> rows = new ArrayList<>();

  /** Adds a row; every row has as many cells as the first. */
  void row(String... cells) {
    List<String> row = new ArrayList<>();
    for (String cell : cells) {
      row.add(NameRules.spelledOut(cell));
    }
    rows.add(row);
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /** Prints all rows, each behind this indent, empty columns left out. */
  void print(PrintWriter out, String indent) {
    if (rows.isEmpty()) {
      return;
    }
    int[] widths = new int[rows.get(0).size()];
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(indent);
      for (int i = 0; i < widths.length; i++) {
        if (widths[i] > 0) {
          line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length())).append(GAP);
        }
      }
      out.println(line.toString().stripTrailing());
    }
  }
}
