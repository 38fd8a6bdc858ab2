package org.relegend.solve;

import java.util.List;
import java.util.OptionalDouble;

/** What a circuit with one fault shows. */
public final class PredictedFault {
  private final Fault fault;
  private final List<String> nodes;
  private final double[] volts;
  private final double[] ohms;

  /**
   * @param nodes sorted
   * @param volts not a number where there is no solution
   */
  PredictedFault(Fault fault, List<String> nodes, double[] volts, double[] ohms) {
    this.fault = fault;
    this.nodes = nodes;
    this.volts = volts;
    this.ohms = ohms;
  }

  public Fault fault() {
    return fault;
  }

  /** Whether every node has a solution. */
  public boolean solved() {
    return java.util.Arrays.stream(volts).noneMatch(Double::isNaN);
  }

  /** The volts of a node that nothing but the circuit loads; empty where there is no solution. */
  public OptionalDouble volts(String node) {
    return value(volts, node);
  }

  /** The resistance that the node shows to the outside. */
  public OptionalDouble ohms(String node) {
    return value(ohms, node);
  }

  /** The volts that a meter of this input resistance shows. */
  public OptionalDouble shown(String node, double meterOhms) {
    OptionalDouble free = volts(node);
    return free.isEmpty()
        ? free
        : OptionalDouble.of(
            free.getAsDouble() * OperatingPoint.shown(ohms(node).orElse(0), meterOhms));
  }

  private OptionalDouble value(double[] values, String node) {
    int place = java.util.Collections.binarySearch(nodes, node);
    return place < 0 || Double.isNaN(values[place])
        ? OptionalDouble.empty()
        : OptionalDouble.of(values[place]);
  }
}
