package org.relegend.sheet;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * What stands on which page: room is kept for it before the pages are known, two columns on as many
 * pages as it takes, and each line is written when its page begins.
 */
final class ContentsList {
  private record Slot(SheetPage leaf, double x, double y) {}

  private static final double SIZE = 8.5;
  private static final double GAP = 18;

  private final PageFlow flow;
  private final Deque<Slot> free = new ArrayDeque<>();

  /**
   * Keeps room from here on.
   *
   * @param entries how many lines there will be
   */
  ContentsList(PageFlow flow, int entries) {
    this.flow = flow;
    flow.heading("Contents", 12);
    int left = entries;
    while (left > 0) {
      int rows = Math.max(1, (int) (flow.room() / PageFlow.lead(SIZE)));
      int here = Math.min(left, 2 * rows);
      keep((here + 1) / 2, here);
      left -= here;
      if (left > 0) {
        flow.newPage();
      }
    }
  }

  private void keep(int rows, int count) {
    for (int i = 0; i < count; i++) {
      int column = i / rows;
      int row = i % rows;
      double x = flow.press().left() + column * (width() + GAP);
      free.add(new Slot(flow.leaf(), x, flow.y() + row * PageFlow.lead(SIZE)));
    }
    flow.down(rows * PageFlow.lead(SIZE));
  }

  private double width() {
    return (flow.press().width() - GAP) / 2;
  }

  /**
   * What begins on the page that is current.
   *
   * @throws IllegalStateException where no room was kept for it
   */
  void enter(String title) {
    Slot slot = free.poll();
    if (slot == null) {
      throw new IllegalStateException("no room was kept in the contents for " + title);
    }
    double base = slot.y() + SIZE;
    String page = String.valueOf(flow.press().pages());
    slot.leaf()
        .text(
            flow.press().face().shortened(title, SIZE, width() - 30), slot.x(), base, SIZE, false);
    slot.leaf().textBefore(page, slot.x() + width(), base, SIZE);
  }
}
