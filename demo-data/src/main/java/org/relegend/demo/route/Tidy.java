package org.relegend.demo.route;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.relegend.demo.design.Artwork;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.Link;
import org.relegend.demo.design.Spot;
import org.relegend.demo.design.Track;

/** Pulls routed paths straight and turns them into tracks and links in millimetres. */
final class Tidy {
  private final Design design;
  private final Grid grid;
  private final Search search;
  private final Congestion congestion;
  private final Rules rules;
  private final int cells;

  Tidy(Design design, Grid grid, Search search, Congestion congestion, Rules rules) {
    this.design = design;
    this.grid = grid;
    this.search = search;
    this.congestion = congestion;
    this.rules = rules;
    cells = grid.cells();
  }

  Artwork artwork(List<Job> jobs) {
    List<Track> tracks = new ArrayList<>();
    List<Link> links = new ArrayList<>();
    for (Job job : jobs) {
      List<Job> kin = jobs.stream().filter(job::kin).toList();
      kin.forEach(congestion::lift);
      Set<Integer> fixed = fixed(kin);
      List<int[]> pulled = new ArrayList<>();
      for (int[] path : job.paths) {
        pulled.add(pull(job, path, fixed));
      }
      job.paths = pulled;
      congestion.measure(job);
      kin.forEach(congestion::lay);
    }
    for (Job job : jobs) {
      for (int[] path : job.paths) {
        draw(job, path, false, tracks, links);
        if (job.twinned) {
          draw(job, path, true, tracks, links);
        }
      }
    }
    return new Widths(design, rules).widened(new Artwork(tracks, links));
  }

  private Set<Integer> fixed(List<Job> kin) {
    Set<Integer> fixed = new HashSet<>();
    for (Job job : kin) {
      for (int[] path : job.paths) {
        for (int end : new int[] {path[0] % cells, path[path.length - 1] % cells}) {
          fixed.add(end);
          fixed.add(end + congestion.shift());
          fixed.add(end - congestion.shift());
        }
      }
    }
    return fixed;
  }

  /** The same path with needless bends taken out; layer changes and junctions stay. */
  private int[] pull(Job job, int[] path, Set<Integer> fixed) {
    List<Integer> out = new ArrayList<>();
    int start = 0;
    out.add(path[0]);
    while (start < path.length - 1) {
      int stop = start + 1;
      while (stop < path.length - 1
          && path[stop] < cells
          && path[stop + 1] < cells
          && path[start] < cells
          && !fixed.contains(path[stop])) {
        stop++;
      }
      pullRun(job, path, start, stop, out);
      start = stop;
    }
    return out.stream().mapToInt(Integer::intValue).toArray();
  }

  private void pullRun(Job job, int[] path, int start, int stop, List<Integer> out) {
    int at = start;
    while (at < stop) {
      int next = at + 1;
      if (path[at] < cells && path[stop] < cells) {
        for (int far = stop; far > at + 1; far--) {
          List<Integer> direct = direct(job, path[at], path[far], far - at);
          if (!direct.isEmpty()) {
            out.addAll(direct.subList(0, direct.size() - 1));
            next = far;
            break;
          }
        }
      }
      out.add(path[next]);
      at = next;
    }
  }

  /** Cells from just after one to the other by at most one bend, or none if that way is taken. */
  private List<Integer> direct(Job job, int from, int to, int limit) {
    int dx = to % grid.columns() - from % grid.columns();
    int dy = to / grid.columns() - from / grid.columns();
    int diagonal = Math.min(Math.abs(dx), Math.abs(dy));
    int straight = Math.max(Math.abs(dx), Math.abs(dy)) - diagonal;
    if (diagonal + straight > limit) {
      return List.of();
    }
    int slant = Integer.signum(dx) + Integer.signum(dy) * grid.columns();
    int level =
        Math.abs(dx) > Math.abs(dy) ? Integer.signum(dx) : Integer.signum(dy) * grid.columns();
    List<Integer> way = walk(job, from, level, straight, slant, diagonal);
    return way.isEmpty() ? walk(job, from, slant, diagonal, level, straight) : way;
  }

  private List<Integer> walk(Job job, int from, int first, int count, int second, int more) {
    List<Integer> way = new ArrayList<>();
    int cell = from;
    for (int k = 0; k < count + more; k++) {
      cell += k < count ? first : second;
      if (!search.usable(job, cell) || congestion.claims(job, cell) > 0) {
        return List.of();
      }
      way.add(cell);
    }
    return way;
  }

  private void draw(Job job, int[] path, boolean twin, List<Track> tracks, List<Link> links) {
    String name = twin ? job.name.replace("A_", "B_") : job.name;
    double down = twin ? rules.twinShift() : 0;
    int k = 0;
    while (k < path.length) {
      int stop = k;
      while (stop + 1 < path.length && path[stop + 1] / cells == path[k] / cells) {
        stop++;
      }
      List<Spot> points = new ArrayList<>();
      for (int n = k; n <= stop; n++) {
        points.add(exact(job, path[n] % cells, down));
      }
      if (path[k] >= cells) {
        links.add(new Link(name, points.get(0), points.get(points.size() - 1)));
      } else if (points.size() > 1) {
        tracks.add(new Track(name, rules.track(), Corners.only(points)));
      }
      k = stop + 1;
    }
  }

  private Spot exact(Job job, int cell, double down) {
    for (Spot pad : job.pads) {
      if (grid.cell(pad) == cell) {
        return new Spot(pad.x(), pad.y() + down);
      }
    }
    Spot at = grid.spot(cell);
    return new Spot(round(at.x()), round(at.y() + down));
  }

  private static double round(double value) {
    return Math.rint(value * 100) / 100;
  }
}
