package org.relegend.demo.ray;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Many solids over one board, sorted into columns of 3 mm, so that a line meets only few of them.
 * Immutable and free to use from many threads.
 */
public final class Scene {
  private static final double CELL = 3;
  private static final double MARGIN = 30;

  private final int columns;
  private final int rows;
  private final Solid[][] inColumn;
  private final float[] top;
  private final double summit;

  public Scene(double width, double height, List<Solid> solids) {
    columns = (int) Math.ceil((width + 2 * MARGIN) / CELL);
    rows = (int) Math.ceil((height + 2 * MARGIN) / CELL);
    List<List<Solid>> lists = new ArrayList<>();
    for (int k = 0; k < columns * rows; k++) {
      lists.add(new ArrayList<>());
    }
    top = new float[columns * rows];
    Arrays.fill(top, -1e9f);
    double highest = 0;
    for (Solid solid : solids) {
      highest = Math.max(highest, solid.high.z());
      for (int row = index(solid.low.y(), rows); row <= index(solid.high.y(), rows); row++) {
        for (int column = index(solid.low.x(), columns);
            column <= index(solid.high.x(), columns);
            column++) {
          lists.get(row * columns + column).add(solid);
          top[row * columns + column] =
              Math.max(top[row * columns + column], (float) solid.high.z() + 0.01f);
        }
      }
    }
    summit = highest;
    inColumn = lists.stream().map(list -> list.toArray(new Solid[0])).toArray(Solid[][]::new);
  }

  /** The height of the tallest body. */
  public double summit() {
    return summit;
  }

  /** The nearest body on the way; fills in where it was met and the normal there. */
  public boolean nearest(Ray ray, double from, double to, Hit hit) {
    return walk(ray, from, to, hit, false);
  }

  /** Whether anything stands in the way. */
  public boolean blocked(Ray ray, double from, double to, Hit hit) {
    return walk(ray, from, to, hit, true);
  }

  private boolean walk(Ray ray, double from, double to, Hit hit, boolean any) {
    double stepX = ray.dx == 0 ? 1e30 : CELL / Math.abs(ray.dx);
    double stepY = ray.dy == 0 ? 1e30 : CELL / Math.abs(ray.dy);
    double startX = ray.ox + ray.dx * from;
    double startY = ray.oy + ray.dy * from;
    int column = (int) Math.floor((startX + MARGIN) / CELL);
    int row = (int) Math.floor((startY + MARGIN) / CELL);
    double edgeX = (column + (ray.dx > 0 ? 1 : 0)) * CELL - MARGIN;
    double edgeY = (row + (ray.dy > 0 ? 1 : 0)) * CELL - MARGIN;
    double nextX = ray.dx == 0 ? 1e30 : (edgeX - ray.ox) / ray.dx;
    double nextY = ray.dy == 0 ? 1e30 : (edgeY - ray.oy) / ray.dy;
    double best = to;
    double entered = from;
    boolean found = false;
    while (entered < best) {
      double left = Math.min(Math.min(nextX, nextY), best);
      if (column >= 0 && row >= 0 && column < columns && row < rows) {
        int cell = row * columns + column;
        double lowest = ray.oz + ray.dz * (ray.dz < 0 ? left : entered);
        if (lowest < top[cell]) {
          for (Solid solid : inColumn[cell]) {
            if (solid.meets(ray, from, best, hit)) {
              if (any) {
                return true;
              }
              best = hit.enter;
              hit.t = best;
              hit.face = hit.enterFace;
              hit.solid = solid;
              found = true;
            }
          }
        }
      }
      if (ray.dz > 0 && ray.oz + ray.dz * left > summit) {
        break;
      }
      entered = left;
      if (nextX < nextY) {
        nextX += stepX;
        column += ray.dx > 0 ? 1 : -1;
      } else {
        nextY += stepY;
        row += ray.dy > 0 ? 1 : -1;
      }
    }
    if (found) {
      hit.x = ray.ox + ray.dx * hit.t;
      hit.y = ray.oy + ray.dy * hit.t;
      hit.z = ray.oz + ray.dz * hit.t;
      hit.solid.normal(hit);
    }
    return found;
  }

  private static int index(double at, int count) {
    return Math.max(0, Math.min(count - 1, (int) Math.floor((at + MARGIN) / CELL)));
  }
}
