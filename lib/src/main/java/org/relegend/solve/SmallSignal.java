package org.relegend.solve;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.hipparchus.complex.Complex;

/**
 * A circuit's answer to a small alternating current or voltage at one frequency, about its
 * operating point.
 */
public final class SmallSignal {
  private final Map<String, Integer> islandOf = new HashMap<>();
  private final List<SolvedIsland> islands;
  private final List<Optional<DMatrixRMaj>> inverses;

  private SmallSignal(List<SolvedIsland> islands, List<Optional<DMatrixRMaj>> inverses) {
    this.islands = islands;
    this.inverses = inverses;
    for (int k = 0; k < islands.size(); k++) {
      for (String node : islands.get(k).system().nodes()) {
        islandOf.put(node, k);
      }
    }
  }

  static SmallSignal of(List<SolvedIsland> islands, double hertz) {
    if (!(hertz > 0)) {
      throw new IllegalArgumentException("small signals need a frequency, not " + hertz + " Hz");
    }
    return new SmallSignal(
        islands, islands.stream().map(island -> inverse(island, hertz)).toList());
  }

  /** Real and imaginary parts side by side: [G -B; B G]. */
  private static Optional<DMatrixRMaj> inverse(SolvedIsland island, double hertz) {
    NodalSystem system = island.system();
    int n = system.size();
    DMatrixRMaj matrix = new DMatrixRMaj(2 * n, 2 * n);
    for (int k = 0; k < 2 * n; k++) {
      matrix.set(k, k, NodalSystem.LEAST_SIEMENS);
    }
    for (int d = 0; d < system.devices(); d++) {
      double[] v = system.across(d, island.x());
      int size = v.length;
      double[] g = new double[size * size];
      double[] b = new double[size * size];
      system.law(d).conduct(v, new double[size], g);
      system.law(d).react(2 * Math.PI * hertz, g, b);
      add(matrix, system.places(d), g, b);
    }
    return DenseStep.inverse(matrix);
  }

  private static void add(DMatrixRMaj matrix, int[] places, double[] g, double[] b) {
    int n = matrix.numRows / 2;
    int size = places.length;
    for (int k = 0; k < size; k++) {
      for (int m = 0; m < size; m++) {
        if (places[k] >= 0 && places[m] >= 0) {
          matrix.add(places[k], places[m], g[k * size + m]);
          matrix.add(n + places[k], n + places[m], g[k * size + m]);
          matrix.add(places[k], n + places[m], -b[k * size + m]);
          matrix.add(n + places[k], places[m], b[k * size + m]);
        }
      }
    }
  }

  /** Volts at a node for one ampere into another. */
  public Optional<Complex> ohms(String node, String into) {
    Integer island = islandOf.get(node);
    if (island == null || !island.equals(islandOf.get(into))) {
      return Optional.empty();
    }
    NodalSystem system = islands.get(island).system();
    int to = system.place(node);
    int from = system.place(into);
    return inverses
        .get(island)
        .map(inverse -> new Complex(inverse.get(to, from), inverse.get(system.size() + to, from)));
  }

  /** Volts at a node for one volt at another, which some generator holds there. */
  public Optional<Complex> gain(String input, String node) {
    return ohms(node, input).flatMap(out -> ohms(input, input).map(out::divide));
  }

  /** The level in volts at a node where a generator holds this many at the input. */
  public Optional<Double> level(String input, double volts, String node) {
    return gain(input, node).map(gain -> gain.norm() * volts);
  }
}
