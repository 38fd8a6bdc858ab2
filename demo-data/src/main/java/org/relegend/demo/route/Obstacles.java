package org.relegend.demo.route;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.Hole;
import org.relegend.demo.design.Pads;
import org.relegend.demo.design.PlacedPart;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Spot;

/**
 * What never moves: cells near a pad belong to that pad's net, cells under a part's body take no
 * wire link.
 */
final class Obstacles {
  private static final int FREE = -1;
  private static final int NOBODY = -2;

  private final Grid grid;
  private final int[] owner;
  private final boolean[] covered;

  Obstacles(Design design, Grid grid, Rules rules, Map<String, Integer> nets) {
    this.grid = grid;
    owner = new int[grid.cells()];
    covered = new boolean[grid.cells()];
    Arrays.fill(owner, FREE);
    for (int cell = 0; cell < owner.length; cell++) {
      Spot at = grid.spot(cell);
      double edge =
          Math.min(
              Math.min(at.x(), at.y()),
              Math.min(design.width() - at.x(), design.height() - at.y()));
      if (edge < Rules.EDGE) {
        owner[cell] = NOBODY;
        covered[cell] = true;
      }
    }
    for (PlacedPin pin : design.pins()) {
      boolean mains = pin.builtNet().startsWith("MAINS");
      double zone = rules.padZone(Pads.radius(design, pin)) + (mains ? 1.2 : 0);
      claim(pin.at(), zone, nets.getOrDefault(pin.builtNet(), NOBODY));
      cover(pin.at(), 1.6, 1.6);
    }
    for (Hole hole : design.holes()) {
      claim(hole.at(), hole.diameter() / 2 + 2.2, NOBODY);
      cover(hole.at(), 8, 8);
    }
    for (PlacedPart part : design.parts()) {
      List<Double> size = Bodies.size(part);
      cover(part.at(), size.get(0) + 2, size.get(1) + 2);
    }
  }

  /** Whether the copper of a net may pass a cell. */
  boolean open(int cell, int net) {
    return owner[cell] == FREE || owner[cell] == net;
  }

  /** Whether a wire link may pass over a cell. */
  boolean openAbove(int cell) {
    return !covered[cell];
  }

  private void claim(Spot middle, double radius, int net) {
    int reach = (int) Math.ceil(radius / grid.pitch());
    for (int row = grid.row(middle.y()) - reach; row <= grid.row(middle.y()) + reach; row++) {
      for (int column = grid.column(middle.x()) - reach;
          column <= grid.column(middle.x()) + reach;
          column++) {
        if (row < 0 || column < 0 || row >= grid.rows() || column >= grid.columns()) {
          continue;
        }
        int cell = row * grid.columns() + column;
        if (grid.spot(cell).distance(middle) < radius) {
          owner[cell] = owner[cell] == FREE || owner[cell] == net ? net : NOBODY;
        }
      }
    }
  }

  private void cover(Spot middle, double width, double height) {
    for (int row = grid.row(middle.y() - height / 2);
        row <= grid.row(middle.y() + height / 2);
        row++) {
      for (int column = grid.column(middle.x() - width / 2);
          column <= grid.column(middle.x() + width / 2);
          column++) {
        covered[row * grid.columns() + column] = true;
      }
    }
  }
}
