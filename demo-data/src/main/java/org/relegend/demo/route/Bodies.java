package org.relegend.demo.route;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.relegend.demo.design.PlacedPart;
import org.relegend.demo.design.Tables;

/** How much room parts take on the board, in millimetres. */
final class Bodies {
  private static final Map<String, List<Double>> SIZES = read();

  private Bodies() {}

  /** Width and height of a part's room, by designator where the table names it, else by kind. */
  static List<Double> size(PlacedPart part) {
    List<Double> own = SIZES.get(part.designator());
    List<Double> size = own == null ? SIZES.get(part.kind()) : own;
    if (size == null) {
      throw new IllegalArgumentException("no body size for " + part);
    }
    return size;
  }

  private static Map<String, List<Double>> read() {
    Map<String, List<Double>> sizes = new HashMap<>();
    Tables.rows("bodies.csv")
        .forEach(
            row ->
                sizes.put(
                    row.get("what"),
                    List.of(
                        Double.valueOf(row.get("width_mm")),
                        Double.valueOf(row.get("height_mm")))));
    return sizes;
  }
}
