package org.relegend.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The direct voltages and currents of a circuit at rest. Immutable; may be used by several threads.
 *
 * <p>Pieces of which no solution was found are told by {@link #unsolved()}; nothing is said of
 * their nodes. A circuit that can rest in several states, as a latch, is in one of them.
 */
public final class OperatingPoint {
  private final Netlist netlist;
  private final List<SolvedIsland> islands;
  private final Set<String> unsolved;
  private final Map<String, SolvedIsland> byNode = new HashMap<>();

  private OperatingPoint(Netlist netlist, List<SolvedIsland> islands, Set<String> unsolved) {
    this.netlist = netlist;
    this.islands = List.copyOf(islands);
    this.unsolved = Set.copyOf(unsolved);
    for (SolvedIsland island : islands) {
      island.system().nodes().forEach(node -> byNode.put(node, island));
    }
  }

  /** Solves a circuit, each of its islands by itself. */
  public static OperatingPoint of(Netlist netlist) {
    List<SolvedIsland> solved = new ArrayList<>();
    Set<String> unsolved = new LinkedHashSet<>();
    for (Netlist island : netlist.islands()) {
      SolvedIsland.of(island).ifPresentOrElse(solved::add, () -> unsolved.addAll(unknown(island)));
    }
    return new OperatingPoint(netlist, solved, unsolved);
  }

  private static List<String> unknown(Netlist island) {
    return island.nodes().stream().filter(node -> !island.known().containsKey(node)).toList();
  }

  /**
   * The circuit with something changed, from this solution: quicker than {@link #of} where few
   * devices differ. Other known volts are taken over, too.
   */
  public OperatingPoint changedTo(Netlist changed) {
    if (!changed.known().equals(netlist.known())) {
      return of(changed);
    }
    Change change = new Change(netlist, changed);
    List<SolvedIsland> touched = new ArrayList<>();
    List<SolvedIsland> kept = new ArrayList<>();
    Set<String> stillUnsolved = new LinkedHashSet<>(unsolved);
    for (SolvedIsland island : islands) {
      boolean hit = island.system().nodes().stream().anyMatch(change.nodes::contains);
      (hit ? touched : kept).add(island);
    }
    if (change.nodes.stream().anyMatch(unsolved::contains)) {
      return of(changed);
    }
    if (touched.isEmpty()) {
      return new OperatingPoint(changed, kept, stillUnsolved);
    }
    SolvedIsland base = SolvedIsland.joined(touched);
    Netlist piece = change.appliedTo(base.system().netlist());
    base.changedTo(piece)
        .ifPresentOrElse(kept::add, () -> stillUnsolved.addAll(base.system().nodes()));
    return new OperatingPoint(changed, kept, stillUnsolved);
  }

  /** The devices that went and came. */
  private static final class Change {
    private final Set<String> gone = new HashSet<>();
    private final List<Device> come = new ArrayList<>();
    private final Set<String> nodes = new HashSet<>();
    private final Netlist after;

    Change(Netlist before, Netlist after) {
      this.after = after;
      Map<String, Device> old = new LinkedHashMap<>();
      before.devices().forEach(device -> old.put(device.name(), device));
      for (Device device : after.devices()) {
        Device was = old.remove(device.name());
        if (was == null || !was.equals(device)) {
          come.add(device);
          nodes.addAll(device.nodes());
          if (was != null) {
            gone.add(was.name());
            nodes.addAll(was.nodes());
          }
        }
      }
      for (Device was : old.values()) {
        gone.add(was.name());
        nodes.addAll(was.nodes());
      }
      nodes.removeAll(after.known().keySet());
    }

    Netlist appliedTo(Netlist piece) {
      List<Device> devices = new ArrayList<>(piece.devices());
      devices.removeIf(device -> gone.contains(device.name()));
      devices.addAll(come);
      return new Netlist(devices, after.known());
    }
  }

  public Netlist netlist() {
    return netlist;
  }

  /** Nodes of which no solution was found. */
  public Set<String> unsolved() {
    return unsolved;
  }

  /** Whether every piece has a solution. */
  public boolean solved() {
    return unsolved.isEmpty();
  }

  /** A node's volts; empty for one that isn't there or has no solution. */
  public OptionalDouble volts(String node) {
    Double given = netlist.known().get(node);
    if (given != null) {
      return OptionalDouble.of(given);
    }
    SolvedIsland island = byNode.get(node);
    return island == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(island.x()[island.system().place(node)]);
  }

  /** A node's volts while a meter of this input resistance hangs on it. */
  public OptionalDouble voltsUnderMeter(String node, double meterOhms) {
    OptionalDouble free = volts(node);
    OptionalDouble inside = ohms(node);
    return free.isEmpty() || inside.isEmpty()
        ? free
        : OptionalDouble.of(free.getAsDouble() * shown(inside.getAsDouble(), meterOhms));
  }

  /** The share of a voltage that a meter shows behind a resistance. */
  static double shown(double inside, double meterOhms) {
    return meterOhms / (meterOhms + Math.max(0, inside));
  }

  /** The resistance that a node shows to the outside, about this solution; 0 for a known one. */
  public OptionalDouble ohms(String node) {
    SolvedIsland island = byNode.get(node);
    if (island == null) {
      return netlist.known().containsKey(node) ? OptionalDouble.of(0) : OptionalDouble.empty();
    }
    return OptionalDouble.of(island.ohms(island.system().place(node)));
  }

  /**
   * By how much a node follows another if that is forced: 1 if wholly, 0 if not at all or if either
   * has no solution.
   */
  public double follows(String node, String forced) {
    SolvedIsland island = byNode.get(node);
    if (island == null || !island.equals(byNode.get(forced))) {
      return 0;
    }
    int from = island.system().place(forced);
    return island.transfer(island.system().place(node), from) / island.ohms(from);
  }

  /** The current into a terminal of a device, in amperes. */
  public OptionalDouble amperes(String device, int terminal) {
    Optional<Device> found = netlist.device(device);
    if (found.isEmpty() || found.get().nodes().stream().anyMatch(node -> volts(node).isEmpty())) {
      return OptionalDouble.empty();
    }
    double[] v =
        found.get().nodes().stream().mapToDouble(node -> volts(node).orElseThrow()).toArray();
    return OptionalDouble.of(SolvedIsland.currents(found.get().law(), v)[terminal]);
  }

  /**
   * One standard deviation of each solved node over healthy units, in volts: from the spread of the
   * devices, in the first order.
   */
  public Map<String, Double> spread() {
    Map<String, Double> result = new LinkedHashMap<>();
    for (SolvedIsland island : islands) {
      double[] spread = island.spread();
      for (int n = 0; n < spread.length; n++) {
        result.put(island.system().nodes().get(n), spread[n]);
      }
    }
    return result;
  }

  /**
   * Small signals about this point.
   *
   * @param hertz above zero
   */
  public SmallSignal at(double hertz) {
    return SmallSignal.of(islands, hertz);
  }
}
