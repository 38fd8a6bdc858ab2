package org.relegend.hazard;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.relegend.circuit.Conduction;
import org.relegend.circuit.Node;
import org.relegend.circuit.NodeStep;
import org.relegend.map.PartId;
import org.relegend.map.Potential;

/**
 * The most that can stand at each node against the reference while all works, as far as it follows
 * from what nets, batteries and the mains tell. What nets tell is taken as it is; what lies between
 * is bounded from above: resistors and windings drop nothing, a diode passes its peak, and a node
 * that alternating current reaches while a diode clamps it gains the swing from peak to peak, as in
 * doublers and ladders (half-wave, Delon, Cockcroft and Walton: any handbook of power supplies, as
 * NAVEDTRA 14179, module 7). A node that isn't in here isn't known to carry nothing.
 */
final class PeakVoltages {
  /**
   * A bound and where it is from.
   *
   * @param volts peak, with its sign
   * @param alternating whether it is an alternating voltage as such, not yet a rectified one
   * @param source the node that told it
   * @param step the last step on the way from there; empty at the source
   * @param multiplied whether diodes and capacitors add to what was told
   */
  record Bound(
      double volts, boolean alternating, Node source, Optional<NodeStep> step, boolean multiplied) {
    Bound through(NodeStep next) {
      return new Bound(volts, alternating, source, Optional.of(next), multiplied);
    }

    Bound rectified(NodeStep next) {
      return new Bound(volts, false, source, Optional.of(next), multiplied);
    }

    Bound limitedTo(double most) {
      return Math.abs(volts) <= most
          ? this
          : new Bound(Math.copySign(most, volts), alternating, source, step, multiplied);
    }
  }

  private final CautiousTraversal walk;
  private final Declared declared;
  private final Swings swings;
  private final Map<Node, Bound> highest = new LinkedHashMap<>();
  private final Map<Node, Bound> lowest = new HashMap<>();
  private final Deque<Node> open = new ArrayDeque<>();
  private final Clamps clamps;
  private double most;

  PeakVoltages(CautiousTraversal walk, MainsReach mains) {
    this.walk = walk;
    this.declared = new Declared(walk, mains);
    this.swings = new Swings(walk, declared, mains);
    this.clamps = new Clamps(walk, declared, swings);
    seed();
    spread();
  }

  private void seed() {
    declared
        .direct()
        .forEach((node, volts) -> enter(node, new Bound(volts, false, node, none(), false)));
    new BatteryStacks(walk, declared)
        .volts()
        .forEach((node, volts) -> enter(node, new Bound(volts, false, node, none(), true)));
    double result =
        Math.max(
            highest.values().stream().mapToDouble(Bound::volts).max().orElse(0),
            -lowest.values().stream().mapToDouble(Bound::volts).min().orElse(0));
    for (Map.Entry<Node, Swings.Swing> entry : swings.all().entrySet()) {
      Swings.Swing swing = entry.getValue();
      enter(entry.getKey(), new Bound(swing.peak(), true, swing.source(), swing.step(), false));
      enter(entry.getKey(), new Bound(-swing.peak(), true, swing.source(), swing.step(), false));
      result = Math.max(result, swing.peak());
    }
    most = result + clamps.sum();
    clamps.nodes().forEach(this::pump);
  }

  private static Optional<NodeStep> none() {
    return Optional.empty();
  }

  private void enter(Node node, Bound bound) {
    Map<Node, Bound> side = bound.volts() < 0 ? lowest : highest;
    Bound known = side.get(node);
    if (known == null || Math.abs(bound.volts()) > Math.abs(known.volts()) + 1e-9) {
      side.put(node, bound);
      open.add(node);
    }
  }

  private void spread() {
    while (!open.isEmpty()) {
      Node from = open.remove();
      for (NodeStep step : walk.steps(from)) {
        if (!declared.isTold(step.to()) || isHeating(step)) {
          pass(step);
        }
        if (clamps.has(step.to())) {
          pump(step.to());
        }
      }
    }
  }

  /** The alternating voltage of a filament is what heats it, not what it gives. */
  private boolean isHeating(NodeStep step) {
    return walk.isToFilament(step) && declared.isAlternating(step.to());
  }

  private void pass(NodeStep step) {
    boolean junction = walk.isRectifier(step) || step.conduction() == Conduction.JUNCTION;
    boolean diode = walk.isRectifier(step) || walk.isDiode(step);
    if (!junction && walk.passesSurely(step)) {
      offer(highest, step, Bound::through);
      offer(lowest, step, Bound::through);
    } else if (junction && walk.isAlong(step)) {
      offer(highest, step, Bound::rectified);
      if (diode) {
        offer(lowest, step, Bound::through);
      }
    } else if (junction) {
      offer(lowest, step, Bound::rectified);
      if (diode) {
        offer(highest, step, Bound::through);
      }
    }
  }

  /** Against the current of a diode only what a rail is told to be: something must feed it. */
  private void offer(
      Map<Node, Bound> side, NodeStep step, BiFunction<Bound, NodeStep, Bound> passed) {
    Bound bound = side.get(step.from());
    if (bound != null) {
      Bound next = passed.apply(bound, step);
      boolean against = walk.isDiode(step) && bound.volts() > 0 != walk.isAlong(step);
      if (!against || isTold(bound)) {
        enter(step.to(), next.limitedTo(most));
      }
    }
  }

  private boolean isTold(Bound bound) {
    return declared.potential(bound.source()).nature() == Potential.Nature.DC
        && !bound.multiplied();
  }

  /** What a clamp adds: the diode holds one peak at its other side, the other one is beyond. */
  private void pump(Node node) {
    double swing = 2 * swings.peak(node);
    Swings.Swing origin = swings.at(node).orElseThrow();
    for (NodeStep step : walk.steps(node)) {
      if (walk.isDiode(step)) {
        boolean rises = !walk.isAlong(step);
        double base = rises ? volts(highest, step.to()) : volts(lowest, step.to());
        double beyond = rises ? base + swing : base - swing;
        Bound bound = new Bound(beyond, false, origin.source(), origin.step(), true);
        enter(node, bound.limitedTo(most));
      }
    }
  }

  private static double volts(Map<Node, Bound> side, Node node) {
    Bound bound = side.get(node);
    return bound == null || bound.alternating() ? 0 : bound.volts();
  }

  /** The bound of greatest amount at this node. */
  Optional<Bound> at(Node node) {
    Bound high = highest.get(node);
    Bound low = lowest.get(node);
    if (high == null || low == null) {
      return Optional.ofNullable(high == null ? low : high);
    }
    boolean rectified = high.alternating() && !low.alternating() && -low.volts() >= high.volts();
    return Optional.of(rectified || -low.volts() > high.volts() ? low : high);
  }

  /** Both bounds at this node, as far as they are known. */
  Stream<Bound> bounds(Node node) {
    return Stream.of(highest, lowest).flatMap(side -> Optional.ofNullable(side.get(node)).stream());
  }

  /** The parts on the way to the greater bound of a node, from where it is told. */
  List<PartId> wayTo(Node node) {
    Deque<PartId> way = new ArrayDeque<>();
    Set<Node> seen = new HashSet<>();
    Optional<Bound> bound = at(node);
    Map<Node, Bound> side = bound.isPresent() && bound.get().volts() < 0 ? lowest : highest;
    Optional<NodeStep> step = bound.flatMap(Bound::step);
    while (step.isPresent() && seen.add(step.get().to())) {
      way.addFirst(step.get().out().part());
      way.addFirst(step.get().in().part());
      step = Optional.ofNullable(side.get(step.get().from())).flatMap(Bound::step);
    }
    return new ArrayList<>(new LinkedHashSet<>(way));
  }

  /** The nodes of which something follows, those told first. */
  List<Node> nodes() {
    Map<Node, Boolean> all = new LinkedHashMap<>();
    highest.keySet().forEach(node -> all.put(node, true));
    lowest.keySet().forEach(node -> all.put(node, true));
    return List.copyOf(all.keySet());
  }

  double highest(Node node) {
    Bound bound = highest.get(node);
    return bound == null ? 0 : Math.max(0, bound.volts());
  }

  double lowest(Node node) {
    Bound bound = lowest.get(node);
    return bound == null ? 0 : Math.min(0, bound.volts());
  }

  /** The most that can stand between two groups of wired nodes; one mains is one source. */
  double between(Collection<Node> a, Collection<Node> b) {
    double up = most(a, this::highest) - least(b);
    double down = most(b, this::highest) - least(a);
    return isUntouched(a) && isUntouched(b) ? 0 : Math.max(up, down);
  }

  private static double most(Collection<Node> nodes, ToDoubleFunction<Node> bound) {
    return nodes.stream().mapToDouble(bound).max().orElse(0);
  }

  private double least(Collection<Node> nodes) {
    return nodes.stream().mapToDouble(this::lowest).min().orElse(0);
  }

  /** Whether what stands there alternates as it is told, no diode having had it. */
  private boolean isUntouched(Collection<Node> nodes) {
    return nodes.stream().flatMap(this::bounds).allMatch(Bound::alternating);
  }

  /** Whether it is told, or follows from a winding, the mains or batteries by what feeds it. */
  boolean isFollowed(Node node) {
    return declared.isTold(node)
        || at(node).filter(bound -> bound.multiplied() || !isTold(bound)).isPresent();
  }

  boolean knows(Node node) {
    return declared.isFixed(node) || highest.containsKey(node) || lowest.containsKey(node);
  }

  Declared declared() {
    return declared;
  }

  Swings swings() {
    return swings;
  }
}
