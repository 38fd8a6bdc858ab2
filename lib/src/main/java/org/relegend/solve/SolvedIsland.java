package org.relegend.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;

/** One piece of a circuit with its solution. */
final class SolvedIsland {
  private final NodalSystem system;
  private final double[] x;
  private final DMatrixRMaj slopes;
  private final DMatrixRMaj inverse;

  private SolvedIsland(NodalSystem system, double[] x, DMatrixRMaj slopes, DMatrixRMaj inverse) {
    this.system = system;
    this.x = x;
    this.slopes = slopes;
    this.inverse = inverse;
  }

  NodalSystem system() {
    return system;
  }

  /** Volts of its nodes. */
  double[] x() {
    return x;
  }

  /** Solved from nothing; empty where no solution was found. */
  static Optional<SolvedIsland> of(Netlist island) {
    NodalSystem system = new NodalSystem(island);
    return new Continuation(system, new double[system.size()]).solved().flatMap(x -> at(system, x));
  }

  private static Optional<SolvedIsland> at(NodalSystem system, double[] x) {
    DMatrixRMaj slopes = new Newton(system, new DenseStep()).slopesAt(x);
    return DenseStep.inverse(slopes).map(inverse -> new SolvedIsland(system, x, slopes, inverse));
  }

  /** Several as one, side by side. */
  static SolvedIsland joined(List<SolvedIsland> parts) {
    if (parts.size() == 1) {
      return parts.get(0);
    }
    List<Device> devices = new ArrayList<>();
    List<String> nodes = new ArrayList<>();
    java.util.Map<String, Double> known = new java.util.TreeMap<>();
    for (SolvedIsland part : parts) {
      devices.addAll(part.system.netlist().devices());
      nodes.addAll(part.system.nodes());
      known.putAll(part.system.netlist().known());
    }
    NodalSystem system = new NodalSystem(new Netlist(devices, known), nodes);
    double[] x = parts.stream().flatMapToDouble(part -> Arrays.stream(part.x)).toArray();
    return new SolvedIsland(
        system,
        x,
        diagonal(parts.stream().map(part -> part.slopes).toList(), x.length, 1),
        diagonal(parts.stream().map(part -> part.inverse).toList(), x.length, 1));
  }

  /** Blocks along the diagonal of a larger matrix, and this value along the rest of it. */
  private static DMatrixRMaj diagonal(List<DMatrixRMaj> blocks, int size, double rest) {
    DMatrixRMaj result = new DMatrixRMaj(size, size);
    int from = 0;
    for (DMatrixRMaj block : blocks) {
      for (int row = 0; row < block.numRows; row++) {
        System.arraycopy(
            block.data,
            row * block.numCols,
            result.data,
            (from + row) * size + from,
            block.numCols);
      }
      from += block.numRows;
    }
    for (; from < size; from++) {
      result.data[from * size + from] = rest;
    }
    return result;
  }

  /**
   * The solution for a netlist that differs a little from this one's: the search starts here.
   *
   * @return empty where no solution was found
   */
  Optional<SolvedIsland> changedTo(Netlist changed) {
    NodalSystem next = new NodalSystem(changed, system.nodes());
    int size = next.size();
    double[] start = Arrays.copyOf(x, size);
    LowRankStep step =
        new LowRankStep(
            diagonal(List.of(slopes), size, NodalSystem.LEAST_SIEMENS),
            diagonal(List.of(inverse), size, 1 / NodalSystem.LEAST_SIEMENS));
    double[] solution = start.clone();
    Newton newton = new Newton(next, step);
    if (!newton.run(solution, 40)) {
      Optional<double[]> found = new Continuation(next, start).solvedTheLongWay();
      if (found.isEmpty()) {
        return Optional.empty();
      }
      solution = found.get();
    }
    double[] there = solution;
    DMatrixRMaj matrix = newton.slopesAt(there);
    return step.inverseOf(matrix).map(ohms -> new SolvedIsland(next, there, matrix, ohms));
  }

  /** What the node gives way by, in ohms, seen from outside. */
  double ohms(int place) {
    return inverse.data[place * system.size() + place];
  }

  /** Volts at each node by one ampere drawn from another. */
  double transfer(int to, int from) {
    return inverse.data[to * system.size() + from];
  }

  /**
   * The standard deviation of each node's volts over healthy units, in the first order: the sum of
   * squares of what each device's own spread changes.
   */
  double[] spread() {
    int n = system.size();
    double[] squares = new double[n];
    for (int d = 0; d < system.devices(); d++) {
      double[] v = system.across(d, x);
      double[] usual = currents(system.law(d), v);
      for (DeviceLaw law : system.law(d).spread()) {
        double[] other = currents(law, v);
        for (int to = 0; to < n; to++) {
          double change = 0;
          for (int k = 0; k < v.length; k++) {
            int from = system.places(d)[k];
            change += from < 0 ? 0 : transfer(to, from) * (other[k] - usual[k]);
          }
          squares[to] += change * change;
        }
      }
    }
    Arrays.setAll(squares, k -> Math.sqrt(squares[k]));
    return squares;
  }

  static double[] currents(DeviceLaw law, double[] v) {
    double[] i = new double[v.length];
    law.conduct(v, i, new double[v.length * v.length]);
    return i;
  }
}
