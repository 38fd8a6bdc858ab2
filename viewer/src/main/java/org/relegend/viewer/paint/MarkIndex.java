package org.relegend.viewer.paint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.relegend.map.Box;

/**
 * Finds the marks that touch a box without looking at all of them. Marks lie in the cells of a grid
 * by the middle of their bounds; the few that are much larger than most are looked at always.
 */
final class MarkIndex {
  /** Marks per cell to aim at. */
  private static final double PER_CELL = 4;

  /** How many times larger than the usual one a mark must be to count as large. */
  private static final double LARGE = 4;

  private record Cell(int column, int row) {}

  private final List<Mark> marks;
  private final List<Box> bounds;
  private final Map<Cell, List<Integer>> cells = new HashMap<>();
  private final List<Integer> large = new ArrayList<>();
  private final double side;
  private final double usualRadius;

  MarkIndex(List<Mark> marks) {
    this.marks = marks;
    this.bounds = marks.stream().map(Mark::bounds).toList();
    double[] radii = bounds.stream().mapToDouble(MarkIndex::radius).sorted().toArray();
    this.usualRadius = radii.length == 0 ? 0 : LARGE * radii[radii.length * 9 / 10];
    this.side = sideFor(bounds);
    for (int i = 0; i < marks.size(); i++) {
      Box box = bounds.get(i);
      if (radius(box) > usualRadius) {
        large.add(i);
      } else {
        cells
            .computeIfAbsent(cell(box.centre().x(), box.centre().y()), c -> new ArrayList<>())
            .add(i);
      }
    }
  }

  /** The places, in the list it was made of, of all marks whose bounds touch a box; in order. */
  int[] touching(Box box) {
    Box wide = box.grown(usualRadius);
    Cell first = cell(wide.left(), wide.top());
    Cell last = cell(wide.right(), wide.bottom());
    List<Integer> found = new ArrayList<>(large);
    long count = (last.column - first.column + 1L) * (last.row - first.row + 1L);
    if (count > cells.size()) {
      cells.values().forEach(found::addAll);
    } else {
      for (int row = first.row; row <= last.row; row++) {
        for (int column = first.column; column <= last.column; column++) {
          found.addAll(cells.getOrDefault(new Cell(column, row), List.of()));
        }
      }
    }
    int[] places =
        found.stream()
            .mapToInt(Integer::intValue)
            .filter(place -> bounds.get(place).touches(box))
            .toArray();
    Arrays.sort(places);
    return places;
  }

  List<Mark> in(Box box) {
    return Arrays.stream(touching(box)).mapToObj(marks::get).toList();
  }

  /** How far apart marks lie typically, were they spread evenly, in picture units. */
  double spacing() {
    return side / Math.sqrt(PER_CELL);
  }

  private Cell cell(double x, double y) {
    return new Cell((int) Math.floor(x / side), (int) Math.floor(y / side));
  }

  private static double radius(Box box) {
    return Math.max(box.width(), box.height()) / 2;
  }

  private static double sideFor(List<Box> boxes) {
    if (boxes.isEmpty()) {
      return 1;
    }
    Box all = Box.around(boxes.stream().map(Box::centre).toList());
    double area = Math.max(1, all.width()) * Math.max(1, all.height());
    return Math.max(1e-3, Math.sqrt(area * PER_CELL / boxes.size()));
  }
}
