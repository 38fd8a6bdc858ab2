package org.relegend.bench.suspect;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.relegend.bench.Condition;
import org.relegend.bench.Reading;
import org.relegend.bench.rule.NetVoltage;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.Potential;
import org.relegend.solve.FaultBook;
import org.relegend.solve.Gap;
import org.relegend.solve.MappedCircuit;
import org.relegend.solve.Netlist;
import org.relegend.solve.OperatingPoint;
import org.relegend.solve.OperatingState;

/**
 * What of a unit's map can be solved at its rails as read, and its readings that can be compared
 * with the solution.
 *
 * @param book every usual failure at these rails
 * @param nodes readings at solved nodes
 * @param span of the known volts, at least 1 V
 * @param lack why the solution isn't to be used; empty where it is
 */
record SolvedUnit(
    MappedCircuit mapped, FaultBook book, List<NodeReading> nodes, double span, String lack) {
  /** Fewer readings at solved nodes than these tell too little. */
  private static final int LEAST_READINGS = 3;

  /** A rail that the solved circuit itself brings this near to what is told is no boundary. */
  private static final double FED = 0.1;

  /** A node that misses by more than this fraction of the span is told wrongly, or the map is. */
  private static final double MISS = 0.15;

  /** The book of the circuit that was asked for last; readings change more often than rails. */
  private static volatile @Nullable FaultBook last;

  SolvedUnit {
    nodes = List.copyOf(nodes);
  }

  /**
   * A reading at a solved node.
   *
   * @param meterOhms of the meter; infinite where unknown
   */
  record NodeReading(NetId net, double volts, double meterOhms) {}

  static SolvedUnit of(UnitReadings unit) {
    OperatingState state = state(unit);
    MappedCircuit mapped = MappedCircuit.of(unit.circuit(), state);
    double span = span(mapped.netlist());
    OperatingPoint healthy = OperatingPoint.of(mapped.netlist());
    List<NodeReading> nodes = readings(unit, mapped, healthy);
    String lack = lack(unit, mapped, healthy, nodes, span);
    FaultBook book =
        lack.isEmpty() ? book(mapped.netlist()) : FaultBook.of(mapped.netlist(), List.of());
    return new SolvedUnit(mapped, book, nodes, span, lack);
  }

  private static FaultBook book(Netlist netlist) {
    FaultBook known = last;
    if (known == null || !known.healthy().netlist().equals(netlist)) {
      known = FaultBook.of(netlist, GradedFailures.of(netlist));
      last = known;
    }
    return known;
  }

  private static double span(Netlist netlist) {
    double low = netlist.known().values().stream().mapToDouble(v -> v).min().orElse(0);
    double high = netlist.known().values().stream().mapToDouble(v -> v).max().orElse(0);
    return Math.max(high - low, 1);
  }

  /** Rails as read, else as told; those that the map itself feeds are solved. */
  private static OperatingState state(UnitReadings unit) {
    Map<NetId, Double> known = new TreeMap<>();
    Map<NetId, Double> rails = new TreeMap<>();
    for (Net net : unit.map().nets()) {
      Potential.Nature nature = net.potential().nature();
      if (unit.isReference(net.id()) || nature == Potential.Nature.EARTH) {
        known.put(net.id(), 0.0);
      } else if (unit.isRail(net.id()) || isOwnSupply(unit, net)) {
        supplyVolts(unit, net.id()).ifPresent(volts -> rails.put(net.id(), volts));
      }
    }
    known.putAll(rails);
    Map<PartId, String> fitted = new HashMap<>();
    for (Condition condition : unit.job().conditions()) {
      if (!condition.fitted().isEmpty()) {
        fitted.put(condition.part(), condition.fitted());
      }
    }
    for (NetId rail : rails.keySet()) {
      if (isFed(unit, rail, known, fitted)) {
        known.remove(rail);
      }
    }
    return new OperatingState(known, Map.of(), Map.of(), fitted, Set.of());
  }

  /** A channel's own supply: told or read, with supply pins on it. */
  private static boolean isOwnSupply(UnitReadings unit, Net net) {
    return net.pins().stream()
        .flatMap(pin -> unit.terminals(pin).stream())
        .anyMatch(terminal -> terminal.role().equals("V+") || terminal.role().equals("V-"));
  }

  private static OptionalDouble supplyVolts(UnitReadings unit, NetId net) {
    return unit.volts(net)
        .map(NetVoltage::value)
        .map(OptionalDouble::of)
        .orElseGet(() -> unit.nominal(net));
  }

  private static boolean isFed(
      UnitReadings unit, NetId rail, Map<NetId, Double> known, Map<PartId, String> fitted) {
    OptionalDouble told = unit.nominal(rail);
    Map<NetId, Double> others = new TreeMap<>(known);
    others.remove(rail);
    if (told.isEmpty() || others.values().stream().allMatch(volts -> volts == 0)) {
      return false;
    }
    Netlist without =
        MappedCircuit.of(
                unit.circuit(), new OperatingState(others, Map.of(), Map.of(), fitted, Set.of()))
            .netlist();
    OptionalDouble fed = OperatingPoint.of(without).volts(rail.text());
    return fed.isPresent()
        && Math.abs(fed.getAsDouble() - told.getAsDouble()) <= FED * Math.abs(told.getAsDouble());
  }

  private static List<NodeReading> readings(
      UnitReadings unit, MappedCircuit mapped, OperatingPoint healthy) {
    List<NodeReading> nodes = new ArrayList<>();
    for (NetId net : unit.netsRead()) {
      Reading reading = unit.reading(net).orElseThrow();
      boolean known = mapped.netlist().known().containsKey(net.text());
      if (!known && !reading.setting().lifted() && healthy.volts(net.text()).isPresent()) {
        double ohms = reading.setting().with().ohms();
        double volts = unit.volts(net).orElseThrow().value();
        nodes.add(new NodeReading(net, volts, ohms > 0 ? ohms : Double.POSITIVE_INFINITY));
      }
    }
    return nodes;
  }

  private static String lack(
      UnitReadings unit,
      MappedCircuit mapped,
      OperatingPoint healthy,
      List<NodeReading> nodes,
      double span) {
    if (mapped.netlist().known().values().stream().allMatch(volts -> volts == 0)) {
      return "no supply voltage is told or read";
    }
    if (nodes.size() < LEAST_READINGS) {
      return "fewer than %d readings lie at nodes that can be solved".formatted(LEAST_READINGS);
    }
    long missed = nodes.stream().filter(node -> misses(unit, healthy, node, span)).count();
    return 2 * missed > nodes.size() ? "the map's parts don't give the voltages that are told" : "";
  }

  /** Whether the drawing's volts are far from the solution. */
  private static boolean misses(
      UnitReadings unit, OperatingPoint healthy, NodeReading node, double span) {
    OptionalDouble told = unit.nominal(node.net());
    double solved = healthy.volts(node.net().text()).orElse(0);
    return told.isPresent() && Math.abs(told.getAsDouble() - solved) > MISS * span;
  }

  /** Nodes at which more may hang than the map has, other than what is plugged in. */
  Set<String> uncertain(UnitReadings unit) {
    Set<String> found = new HashSet<>(mapped.open());
    Set<String> plugs = new HashSet<>();
    for (Gap gap : mapped.gaps()) {
      List<NetId> nets = unit.circuit().netsOf(gap.part());
      if (unit.isFamily(gap.part(), "connector")) {
        nets.forEach(net -> plugs.add(net.text()));
      }
    }
    for (Gap gap : mapped.gaps()) {
      if (!unit.isFamily(gap.part(), "connector")) {
        unit.circuit().netsOf(gap.part()).forEach(net -> plugs.remove(net.text()));
      }
    }
    found.removeAll(plugs);
    return found;
  }
}
