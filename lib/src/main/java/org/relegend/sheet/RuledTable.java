package org.relegend.sheet;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** A table that runs down the pages; its head is repeated on each. */
final class RuledTable {
  private static final double SIZE = 8;
  private static final double PAD = 3;

  /** Height of rows to write into, in points. */
  private static final double TO_FILL = 19;

  private static final Color SHADE = new Color(0xE4E4E4);

  /**
   * One column.
   *
   * @param share of the width, against the other columns
   * @param toFill whether its cells are boxes to write into
   */
  record Column(String head, double share, boolean toFill) {
    Column(String head, double share) {
      this(head, share, false);
    }
  }

  private final PageFlow flow;
  private final List<Column> columns;
  private final double all;
  private boolean begun;

  RuledTable(PageFlow flow, List<Column> columns) {
    this.flow = flow;
    this.columns = List.copyOf(columns);
    this.all = columns.stream().mapToDouble(Column::share).sum();
  }

  /** About how high a table with so many rows to write into is, its head included. */
  static double heightToFill(int rows) {
    return rows * TO_FILL + PageFlow.lead(SIZE) + PAD + 8;
  }

  private double width(Column column) {
    return column.share() / all * flow.press().width();
  }

  private void head() {
    begun = true;
    List<String> heads = columns.stream().map(Column::head).toList();
    draw(heads, height(heads, true), true, false);
    flow.leaf().line(flow.press().left(), flow.y(), flow.press().right(), flow.y(), 0.9);
  }

  void row(String... cells) {
    put(List.of(cells), false);
  }

  /** A shaded row in bold that begins a group. */
  void group(String... cells) {
    put(List.of(cells), true);
  }

  /** A remark over the whole width, below the row it belongs to. */
  void remark(String text) {
    List<String> lines = lines(text, flow.press().width() - 20, false);
    double height = lines.size() * PageFlow.lead(SIZE) + 1;
    begin(height);
    double y = flow.y() + SIZE;
    for (String line : lines) {
      flow.leaf().text(line, flow.press().left() + 14, y, SIZE, false);
      y += PageFlow.lead(SIZE);
    }
    flow.down(height);
  }

  private void put(List<String> cells, boolean group) {
    if (cells.size() != columns.size()) {
      throw new IllegalArgumentException(cells + " for " + columns.size() + " columns");
    }
    double height = height(cells, group);
    begin(group ? height + 2 * PageFlow.lead(SIZE) : height);
    draw(cells, height, group, group);
    flow.leaf().line(flow.press().left(), flow.y(), flow.press().right(), flow.y(), 0.25);
  }

  private void begin(double height) {
    List<String> heads = columns.stream().map(Column::head).toList();
    boolean turned = flow.need(height + (begun ? 0 : height(heads, true)));
    if (turned || !begun) {
      head();
    }
  }

  private double height(List<String> cells, boolean bold) {
    int most = 1;
    boolean filling = false;
    for (int i = 0; i < columns.size(); i++) {
      most = Math.max(most, lines(cells.get(i), width(columns.get(i)) - 2 * PAD, bold).size());
      filling |= !bold && columns.get(i).toFill();
    }
    return Math.max(filling ? TO_FILL : 0, most * PageFlow.lead(SIZE) + PAD);
  }

  private List<String> lines(String cell, double width, boolean bold) {
    return cell.isEmpty()
        ? List.of("")
        : new ArrayList<>(flow.press().face().wrapped(cell, SIZE, width - (bold ? 2 : 0)));
  }

  private void draw(List<String> cells, double height, boolean bold, boolean shaded) {
    SheetPage leaf = flow.leaf();
    double x = flow.press().left();
    if (shaded) {
      leaf.fill(new Rectangle2D.Double(x, flow.y(), flow.press().width(), height), SHADE);
    }
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      double y = flow.y() + SIZE + 1;
      for (String line : lines(cells.get(i), width(column) - 2 * PAD, bold)) {
        leaf.text(line, x + PAD, y, SIZE, bold);
        y += PageFlow.lead(SIZE);
      }
      if (column.toFill() && !bold) {
        leaf.box(x + 2, flow.y() + 2, width(column) - 4, height - 4, 0.8);
      }
      x += width(column);
    }
    flow.down(height);
  }
}
