package org.relegend.demo.route;

import java.util.BitSet;
import java.util.List;

/**
 * How many nets claim each cell. Nets may overlap while they negotiate; what overlaps gets dearer
 * from round to round.
 */
final class Congestion {
  private static final int LINK_ZONE = 5;

  private final Grid grid;
  private final Rules rules;
  private final int shift;
  private final int[] tracks;
  private final int[] above;
  private final int[] history;

  Congestion(Grid grid, Rules rules) {
    this.grid = grid;
    this.rules = rules;
    shift = (int) Math.round(rules.twinShift() / rules.pitch()) * grid.columns();
    tracks = new int[grid.cells()];
    above = new int[grid.cells()];
    history = new int[grid.cells()];
  }

  int shift() {
    return shift;
  }

  int history(int cell) {
    return history[cell];
  }

  void lift(Job job) {
    add(job, -1);
  }

  void lay(Job job) {
    add(job, 1);
  }

  /** Works out which cells the job's present paths claim. */
  void measure(Job job) {
    BitSet low = new BitSet();
    BitSet high = new BitSet();
    int cells = grid.cells();
    int zone = rules.trackZone(job.mains());
    for (int[] path : job.paths) {
      for (int k = 0; k < path.length; k++) {
        int cell = path[k] % cells;
        if (path[k] < cells) {
          boolean end =
              (k > 0 && path[k - 1] >= cells) || (k + 1 < path.length && path[k + 1] >= cells);
          spread(low, cell, end ? zone + 6 : zone);
        } else {
          spread(high, cell, LINK_ZONE);
        }
      }
    }
    job.tracks = low.stream().toArray();
    job.above = high.stream().toArray();
  }

  /** Makes cells dearer where several nets overlap; tells how many cells those are. */
  int punish(List<Job> jobs) {
    int bad = 0;
    for (Job job : jobs) {
      List<Job> kin = jobs.stream().filter(job::kin).toList();
      kin.forEach(this::lift);
      for (int[] path : job.paths) {
        for (int node : path) {
          if (claims(job, node) > 0) {
            remember(node % grid.cells());
            bad++;
          }
        }
      }
      kin.forEach(this::lay);
    }
    return bad;
  }

  private void remember(int cell) {
    for (int dy = -2; dy <= 2; dy++) {
      for (int dx = -2; dx <= 2; dx++) {
        int near = cell + dy * grid.columns() + dx;
        if (near >= 0 && near < history.length) {
          history[near] += 30;
        }
      }
    }
  }

  /** How many laid jobs claim a node that this job uses. */
  int claims(Job job, int node) {
    int cell = node % grid.cells();
    int[] claimed = node < grid.cells() ? tracks : above;
    return claimed[cell] + (job.twinned ? claimed[cell + shift] : 0);
  }

  private void add(Job job, int change) {
    for (int cell : job.tracks) {
      tracks[cell] += change;
      if (job.twinned) {
        tracks[cell + shift] += change;
      }
    }
    for (int cell : job.above) {
      above[cell] += change;
      if (job.twinned) {
        above[cell + shift] += change;
      }
    }
  }

  private void spread(BitSet claimed, int cell, int zone) {
    int reach = (int) Math.sqrt(zone);
    int row = cell / grid.columns();
    int column = cell % grid.columns();
    for (int dy = -reach; dy <= reach; dy++) {
      for (int dx = -reach; dx <= reach; dx++) {
        if (dx * dx + dy * dy < zone
            && row + dy >= 0
            && row + dy < grid.rows()
            && column + dx >= 0
            && column + dx < grid.columns()) {
          claimed.set(cell + dy * grid.columns() + dx);
        }
      }
    }
  }
}
