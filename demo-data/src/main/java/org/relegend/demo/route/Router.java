package org.relegend.demo.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.relegend.demo.design.Artwork;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Spot;

/**
 * Routes a board by negotiation: every net takes its cheapest way, overlaps allowed; what overlaps
 * gets dearer, and nets are routed again until none does. Two channels of one layout get the same
 * copper. Same input, same result.
 */
final class Router {
  private final Design design;
  private final Rules rules;
  private final Grid grid;
  private final Map<String, Integer> nets = new HashMap<>();
  private final List<Job> jobs = new ArrayList<>();
  private final Congestion congestion;
  private final Search search;

  Router(Design design, Rules rules) {
    this.design = design;
    this.rules = rules;
    grid = Grid.over(design.width(), design.height(), rules.pitch());
    for (String net : design.netsAsBuilt().keySet()) {
      nets.put(net, nets.size());
    }
    congestion = new Congestion(grid, rules);
    search = new Search(grid, new Obstacles(design, grid, rules, nets), congestion);
  }

  /**
   * The board's copper; a board that does not come free of overlaps is an IllegalStateException.
   */
  Artwork route() {
    int bad = negotiate();
    if (bad > 0) {
      throw new IllegalStateException("the board does not route: " + bad + " cells overlap");
    }
    return tidied();
  }

  /** Copper that may touch that of other nets in a few places: enough for a board in a photo. */
  Artwork routeRoughly() {
    negotiate();
    return tidied();
  }

  /** Tells how many cells are claimed by several nets in the end. */
  private int negotiate() {
    plan();
    for (int round = 0; round < rules.rounds(); round++) {
      search.pressure(Math.min(8 + 6 * round, 150));
      for (Job job : jobs) {
        List<Job> same = jobs.stream().filter(job::kin).toList();
        same.forEach(congestion::lift);
        search.route(job);
        congestion.measure(job);
        same.forEach(congestion::lay);
      }
      if (congestion.punish(jobs) == 0) {
        return 0;
      }
    }
    return congestion.punish(jobs);
  }

  private Artwork tidied() {
    return new Tidy(design, grid, search, congestion, rules).artwork(jobs);
  }

  private void plan() {
    Map<String, List<PlacedPin>> built = design.netsAsBuilt();
    List<Job> whole = new ArrayList<>();
    built.forEach(
        (net, pins) -> {
          int id = idOf(net);
          if (rules.twinShift() == 0) {
            jobs.add(new Job(net, id, id, false, spots(pins), List.of()));
          } else if (net.startsWith("A_")) {
            jobs.add(new Job(net, id, idOf("B_" + net.substring(2)), true, spots(pins), List.of()));
          } else if (net.startsWith("B_")) {
            twinRest(net, pins, whole);
          } else {
            common(net, pins, whole);
          }
        });
    jobs.addAll(whole);
  }

  private void twinRest(String net, List<PlacedPin> pins, List<Job> whole) {
    List<PlacedPin> rest = pins.stream().filter(pin -> !hasTwin(pin)).toList();
    List<Job.Share> shares =
        jobs.stream()
            .filter(job -> job.twinned && job.twinNet == idOf(net))
            .map(job -> new Job.Share(job, true))
            .toList();
    if (!rest.isEmpty()) {
      whole.add(new Job(net, idOf(net), idOf(net), false, spots(rest), shares));
    }
  }

  private void common(String net, List<PlacedPin> pins, List<Job> whole) {
    List<PlacedPin> first = pins.stream().filter(pin -> channel(pin).equals("A")).toList();
    List<PlacedPin> rest =
        pins.stream().filter(pin -> channel(pin).equals("common") || !hasTwin(pin)).toList();
    List<Job.Share> shares = new ArrayList<>();
    if (first.size() > 1) {
      Job share = new Job(net, idOf(net), idOf(net), true, spots(first), List.of());
      jobs.add(share);
      shares.add(new Job.Share(share, false));
      shares.add(new Job.Share(share, true));
    } else {
      rest = pins;
    }
    whole.add(new Job(net, idOf(net), idOf(net), false, spots(rest), shares));
  }

  private boolean hasTwin(PlacedPin pin) {
    if (channel(pin).equals("A")) {
      return true;
    }
    Spot twin = new Spot(pin.at().x(), pin.at().y() - rules.twinShift());
    return channel(pin).equals("B")
        && design.pins().stream()
            .anyMatch(other -> channel(other).equals("A") && other.at().distance(twin) < 0.01);
  }

  private String channel(PlacedPin pin) {
    return design.part(pin.part()).channel();
  }

  private int idOf(String net) {
    return nets.getOrDefault(net, -1);
  }

  private static List<Spot> spots(List<PlacedPin> pins) {
    return pins.stream().map(PlacedPin::at).toList();
  }
}
