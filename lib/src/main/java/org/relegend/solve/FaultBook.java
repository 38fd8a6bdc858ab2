package org.relegend.solve;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Every usual fault of a circuit, solved beforehand (simulation before test; Bandler and Salama,
 * Proceedings of the IEEE 73, 1985). Immutable.
 */
public final class FaultBook {
  private final OperatingPoint healthy;
  private final Map<String, Double> spread;
  private final List<PredictedFault> faults;

  private FaultBook(
      OperatingPoint healthy, Map<String, Double> spread, List<PredictedFault> faults) {
    this.healthy = healthy;
    this.spread = spread;
    this.faults = faults;
  }

  /** The book of the usual failures. */
  public static FaultBook of(Netlist netlist) {
    return of(netlist, UsualFailures.of(netlist));
  }

  /** The book of these faults; on all cores. */
  public static FaultBook of(Netlist netlist, List<Fault> faults) {
    OperatingPoint healthy = OperatingPoint.of(netlist);
    List<String> nodes = netlist.nodes().stream().sorted().toList();
    Stream<PredictedFault> predicted =
        faults.parallelStream().map(fault -> predicted(healthy, fault, nodes));
    return new FaultBook(healthy, Map.copyOf(healthy.spread()), predicted.toList());
  }

  private static PredictedFault predicted(OperatingPoint healthy, Fault fault, List<String> nodes) {
    OperatingPoint faulty = healthy.changedTo(fault.appliedTo(healthy.netlist()));
    return new PredictedFault(
        fault,
        nodes,
        nodes.stream().mapToDouble(node -> faulty.volts(node).orElse(Double.NaN)).toArray(),
        nodes.stream().mapToDouble(node -> faulty.ohms(node).orElse(Double.NaN)).toArray());
  }

  /** The circuit without a fault. */
  public OperatingPoint healthy() {
    return healthy;
  }

  /** One standard deviation of a node's volts over healthy units; 0 for known nodes. */
  public double spread(String node) {
    return spread.getOrDefault(node, 0.0);
  }

  /** In the order of the faults that were asked for. */
  public List<PredictedFault> faults() {
    return faults;
  }
}
