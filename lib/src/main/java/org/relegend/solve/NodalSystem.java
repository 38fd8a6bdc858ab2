package org.relegend.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ejml.data.DMatrixRMaj;

/**
 * The node equations of a netlist: for each node that isn't known, the currents into all devices at
 * it add up to nothing. Known nodes are taken out (modified nodal analysis, Ho, Ruehli and Brennan,
 * IEEE Transactions on Circuits and Systems 22, 1975, keeps them as branch currents; sources
 * between two nodes have a resistance here, so that none is needed).
 */
final class NodalSystem {
  /** From every node to the reference, so that a floating one has a voltage: 1 teraohm. */
  static final double LEAST_SIEMENS = 1e-12;

  private final Netlist netlist;
  private final List<String> nodes;
  private final Map<String, Integer> places = new LinkedHashMap<>();
  private final DeviceLaw[] laws;
  private final int[][] at;
  private final double[] known;

  NodalSystem(Netlist netlist) {
    this(netlist, List.of());
  }

  /**
   * @param first nodes in the order that they should have; others follow
   */
  NodalSystem(Netlist netlist, List<String> first) {
    this.netlist = netlist;
    Set<String> order = new LinkedHashSet<>(first);
    order.addAll(netlist.nodes());
    order.removeAll(netlist.known().keySet());
    this.nodes = List.copyOf(order);
    nodes.forEach(node -> places.put(node, places.size()));
    List<Double> volts = new ArrayList<>();
    Map<String, Integer> fixed = new LinkedHashMap<>();
    netlist
        .known()
        .forEach(
            (node, value) -> {
              fixed.put(node, -1 - volts.size());
              volts.add(value);
            });
    this.known = volts.stream().mapToDouble(Double::doubleValue).toArray();
    this.laws = netlist.devices().stream().map(Device::law).toArray(DeviceLaw[]::new);
    this.at = new int[laws.length][];
    for (int d = 0; d < laws.length; d++) {
      at[d] =
          netlist.devices().get(d).nodes().stream()
              .mapToInt(node -> fixed.getOrDefault(node, places.getOrDefault(node, 0)))
              .toArray();
    }
  }

  private NodalSystem(NodalSystem like, DeviceLaw[] laws, double[] known) {
    this.netlist = like.netlist;
    this.nodes = like.nodes;
    this.places.putAll(like.places);
    this.laws = laws;
    this.at = like.at;
    this.known = known;
  }

  /** The same with every op-amp's gain limited. */
  NodalSystem withGainAtMost(double gain) {
    DeviceLaw[] eased = laws.clone();
    java.util.Arrays.setAll(eased, d -> laws[d].withGainAtMost(gain));
    return new NodalSystem(this, eased, known);
  }

  /** The same with all sources and known nodes at a fraction. */
  NodalSystem withSourcesAt(double fraction) {
    DeviceLaw[] weaker = laws.clone();
    java.util.Arrays.setAll(weaker, d -> laws[d].withSourcesAt(fraction));
    double[] scaled = known.clone();
    java.util.Arrays.setAll(scaled, k -> known[k] * fraction);
    return new NodalSystem(this, weaker, scaled);
  }

  Netlist netlist() {
    return netlist;
  }

  List<String> nodes() {
    return nodes;
  }

  int size() {
    return nodes.size();
  }

  int devices() {
    return laws.length;
  }

  DeviceLaw law(int device) {
    return laws[device];
  }

  /** Where each terminal of a device is: a place among the nodes, or below zero for a known one. */
  int[] places(int device) {
    return at[device];
  }

  /** The place of a node; -1 where it is known or not there. */
  int place(String node) {
    return places.getOrDefault(node, -1);
  }

  /** The voltages at a device's terminals. */
  double[] across(int device, double[] x) {
    int[] where = at[device];
    double[] v = new double[where.length];
    for (int k = 0; k < v.length; k++) {
      v[k] = where[k] >= 0 ? x[where[k]] : known[-1 - where[k]];
    }
    return v;
  }

  /**
   * Fills in the equations at these voltages.
   *
   * @param seen for each device the voltages it was last seen at, null at first; brought up to date
   * @param slopes currents out of each node by voltage of each
   * @param rest currents out of each node
   * @return whether some device was kept from going all the way
   */
  boolean fill(
      double[] x,
      double[] @org.jspecify.annotations.Nullable [] seen,
      DMatrixRMaj slopes,
      double[] rest) {
    slopes.zero();
    for (int n = 0; n < size(); n++) {
      slopes.data[n * size() + n] = LEAST_SIEMENS;
      rest[n] = LEAST_SIEMENS * x[n];
    }
    boolean limited = false;
    for (int d = 0; d < laws.length; d++) {
      double[] v = across(d, x);
      double[] to = v.clone();
      double[] from = seen[d];
      limited |= from != null && laws[d].limit(from, to);
      seen[d] = to;
      add(d, v, to, slopes, rest);
    }
    return limited;
  }

  private void add(int d, double[] v, double[] to, DMatrixRMaj slopes, double[] rest) {
    int n = v.length;
    double[] i = new double[n];
    double[] g = new double[n * n];
    laws[d].conduct(to, i, g);
    int[] where = at[d];
    for (int k = 0; k < n; k++) {
      if (where[k] < 0) {
        continue;
      }
      double current = i[k];
      for (int m = 0; m < n; m++) {
        current += g[k * n + m] * (v[m] - to[m]);
        if (where[m] >= 0) {
          slopes.data[where[k] * size() + where[m]] += g[k * n + m];
        }
      }
      rest[where[k]] += current;
    }
  }
}
