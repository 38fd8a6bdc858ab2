package org.relegend.sheet;

import java.util.List;

/** Where the shop, the day the unit goes out and a signature are written by hand. */
final class SignOff {
  private static final List<String> PLACES = List.of("Shop", "Date out", "Name and signature");
  private static final double HEIGHT = 34;

  private SignOff() {}

  static void draw(PageFlow flow) {
    flow.need(HEIGHT + 20);
    double width = flow.press().width() / PLACES.size();
    for (int i = 0; i < PLACES.size(); i++) {
      double x = flow.press().left() + i * width;
      flow.leaf().text(PLACES.get(i), x, flow.y() + 7.5, 7.5, false);
      flow.leaf().box(x, flow.y() + 10, width - 6, HEIGHT - 6, 0.8);
    }
    flow.down(HEIGHT + 10);
  }
}
