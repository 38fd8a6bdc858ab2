package org.relegend.demo.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Joins all pads of one job by cheapest paths, one after another. Nodes are cells on three layers:
 * copper, links that run across, links that run down.
 */
final class Search {
  private static final int STEP = 10;
  private static final int DIAGONAL = 14;
  private static final int LINK_END = 160;
  private static final int FAR = Integer.MAX_VALUE;

  private final Grid grid;
  private final Obstacles obstacles;
  private final Congestion congestion;
  private final int cells;
  private final int[] cost;
  private final int[] from;
  private final int[] component;
  private final Heap queue = new Heap();
  private int pressure;

  Search(Grid grid, Obstacles obstacles, Congestion congestion) {
    this.grid = grid;
    this.obstacles = obstacles;
    this.congestion = congestion;
    cells = grid.cells();
    cost = new int[3 * cells];
    from = new int[3 * cells];
    component = new int[cells];
  }

  /** What each overlap costs from now on. */
  void pressure(int perClaim) {
    pressure = perClaim;
  }

  /** Routes the job anew; the job is not laid while this runs. */
  void route(Job job) {
    Arrays.fill(component, 0);
    int parts = mark(job);
    List<int[]> paths = new ArrayList<>();
    boolean[] joined = new boolean[parts + 1];
    joined[1] = true;
    for (int k = 1; k < parts; k++) {
      int end = spread(job, joined);
      int[] path = trace(end);
      paths.add(path);
      joined[component[end]] = true;
      for (int node : path) {
        if (node < cells && component[node] == 0) {
          component[node] = 1;
        }
      }
    }
    job.paths = paths;
  }

  private int mark(Job job) {
    int parts = 0;
    for (Job.Share share : job.shares) {
      parts++;
      markTree(share.job(), parts, share.twin() ? congestion.shift() : 0);
    }
    for (var pad : job.pads) {
      parts++;
      component[grid.cell(pad)] = parts;
    }
    return parts;
  }

  private void markTree(Job share, int part, int shift) {
    for (int[] path : share.paths) {
      for (int node : path) {
        if (node < cells) {
          component[node + shift] = part;
        }
      }
    }
  }

  private int spread(Job job, boolean[] joined) {
    Arrays.fill(cost, FAR);
    queue.clear();
    for (int cell = 0; cell < cells; cell++) {
      if (component[cell] != 0 && joined[component[cell]]) {
        cost[cell] = 0;
        from[cell] = -1;
        queue.add(cell);
      }
    }
    while (!queue.isEmpty()) {
      long head = queue.remove();
      int node = (int) (head % (3L * cells));
      int sofar = (int) (head / (3L * cells));
      if (sofar > cost[node]) {
        continue;
      }
      if (node < cells && component[node] != 0 && !joined[component[node]]) {
        return node;
      }
      visit(job, node, sofar);
    }
    throw new IllegalStateException("no way for net " + job.name);
  }

  private void visit(Job job, int node, int sofar) {
    int layer = node / cells;
    int cell = node % cells;
    if (layer == 0) {
      for (int dy = -1; dy <= 1; dy++) {
        for (int dx = -1; dx <= 1; dx++) {
          int next = cell + dy * grid.columns() + dx;
          if ((dx != 0 || dy != 0) && usable(job, next)) {
            int step = dx != 0 && dy != 0 ? DIAGONAL : STEP;
            offer(next, sofar + price(job, next, step), node);
          }
        }
      }
      if (roomForEnd(job, cell)) {
        int ends = sofar + LINK_END + endPrice(job, cell);
        offer(cells + cell, ends, node);
        offer(2 * cells + cell, ends, node);
      }
    } else {
      int step = layer == 1 ? 1 : grid.columns();
      for (int next : new int[] {cell - step, cell + step}) {
        if (usableAbove(job, next)) {
          offer(layer * cells + next, sofar + abovePrice(job, next), node);
        }
      }
      if (roomForEnd(job, cell)) {
        offer(cell, sofar + LINK_END + endPrice(job, cell), node);
      }
    }
  }

  private void offer(int node, int price, int before) {
    if (price < cost[node]) {
      cost[node] = price;
      from[node] = before;
      queue.add(price * (3L * cells) + node);
    }
  }

  /** Whether the job's copper may pass a cell, here and, if twinned, further down. */
  boolean usable(Job job, int cell) {
    if (!obstacles.open(cell, job.net)) {
      return false;
    }
    return !job.twinned
        || cell / grid.columns() < bandEnd()
            && obstacles.open(cell + congestion.shift(), job.twinNet);
  }

  private boolean usableAbove(Job job, int cell) {
    if (!obstacles.openAbove(cell)) {
      return false;
    }
    return !job.twinned
        || cell / grid.columns() < bandEnd() && obstacles.openAbove(cell + congestion.shift());
  }

  private int bandEnd() {
    return congestion.shift() / grid.columns() + 1;
  }

  private boolean roomForEnd(Job job, int cell) {
    return usable(job, cell - 1)
        && usable(job, cell + 1)
        && usable(job, cell - grid.columns())
        && usable(job, cell + grid.columns())
        && usableAbove(job, cell);
  }

  private int price(Job job, int cell, int step) {
    return step + step * congestion.history(cell) / 100 + pressure * congestion.claims(job, cell);
  }

  private int endPrice(Job job, int cell) {
    int price = 0;
    for (int next : new int[] {cell - 1, cell + 1, cell - grid.columns(), cell + grid.columns()}) {
      price += price(job, next, 0);
    }
    return price;
  }

  private int abovePrice(Job job, int cell) {
    return STEP + pressure * congestion.claims(job, cells + cell);
  }

  private int[] trace(int end) {
    List<Integer> nodes = new ArrayList<>();
    for (int node = end; node >= 0; node = from[node]) {
      nodes.add(node);
    }
    int[] path = new int[nodes.size()];
    for (int k = 0; k < path.length; k++) {
      path[k] = nodes.get(path.length - 1 - k);
    }
    return path;
  }
}
