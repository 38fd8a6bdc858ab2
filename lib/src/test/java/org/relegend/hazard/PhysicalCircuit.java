package org.relegend.hazard;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A supply as it is built, whatever a map says of it: what is joined so that a hand would feel the
 * mains through it, and windings, capacitors, diodes and resistors with values. Reach is found by
 * walking the table of joins, voltages by stepping through time (implicit Euler, Gaussian
 * elimination), for no code under test is used here.
 */
final class PhysicalCircuit {
  private static final int STEPS = 24;
  private static final int CYCLES = 70;
  private static final double LEAK = 1e-7;
  private static final double CAPACITY = 0.5;

  private record Element(char kind, String a, String b, double value) {}

  private final Map<String, Set<String>> joined = new HashMap<>();
  private final List<Element> elements = new ArrayList<>();

  /** Direct current, or more alternating current than a touch may take, flows between these. */
  void join(String a, String b) {
    joined.computeIfAbsent(a, key -> new LinkedHashSet<>()).add(b);
    joined.computeIfAbsent(b, key -> new LinkedHashSet<>()).add(a);
  }

  /** A winding with this peak from a to b. */
  void winding(String a, String b, double peak) {
    elements.add(new Element('W', a, b, peak));
    join(a, b);
  }

  void capacitor(String a, String b) {
    elements.add(new Element('C', a, b, CAPACITY));
  }

  void diode(String anode, String cathode) {
    elements.add(new Element('D', anode, cathode, 0));
    join(anode, cathode);
  }

  void resistor(String a, String b, double ohms) {
    elements.add(new Element('R', a, b, ohms));
    join(a, b);
  }

  void battery(String positive, String negative, double volts) {
    elements.add(new Element('B', positive, negative, volts));
    join(positive, negative);
  }

  /** All joined to these; what is earthed ends there. */
  Set<String> reach(Set<String> from, String earth) {
    Set<String> found = new LinkedHashSet<>(from);
    Deque<String> open = new ArrayDeque<>(found);
    while (!open.isEmpty()) {
      for (String next : joined.getOrDefault(open.remove(), Set.of())) {
        if (!next.equals(earth) && found.add(next)) {
          open.add(next);
        }
      }
    }
    return found;
  }

  /** The greatest amount of voltage at each node against the ground, over the last cycles. */
  Map<String, Double> peaks(String ground) {
    Map<String, Double> peaks = new LinkedHashMap<>();
    Set<String> left = new LinkedHashSet<>();
    elements.forEach(element -> left.addAll(List.of(element.a(), element.b())));
    left.remove(ground);
    while (!left.isEmpty()) {
      Set<String> island = island(left.iterator().next(), ground);
      left.removeAll(island);
      new Transient(new ArrayList<>(island)).run(peaks);
    }
    return peaks;
  }

  private Set<String> island(String start, String ground) {
    Set<String> found = new LinkedHashSet<>(Set.of(start));
    int before = 0;
    while (found.size() > before) {
      before = found.size();
      for (Element element : elements) {
        if (found.contains(element.a()) || found.contains(element.b())) {
          found.addAll(List.of(element.a(), element.b()));
          found.remove(ground);
        }
      }
    }
    return found;
  }

  /** One island over time. */
  private final class Transient {
    private final List<String> nodes;
    private final List<Element> own;
    private final double[] held;
    private final boolean[] on;

    Transient(List<String> nodes) {
      this.nodes = nodes;
      this.own =
          elements.stream().filter(e -> nodes.contains(e.a()) || nodes.contains(e.b())).toList();
      this.held = new double[own.size()];
      this.on = new boolean[own.size()];
    }

    void run(Map<String, Double> peaks) {
      for (int step = 0; step < STEPS * CYCLES; step++) {
        double[] volts = refresh(Math.sin(2 * Math.PI * step / STEPS));
        for (int e = 0; e < own.size(); e++) {
          held[e] = across(own.get(e), volts);
        }
        for (int n = 0; n < nodes.size() && step > STEPS * (CYCLES - 2); n++) {
          peaks.merge(nodes.get(n), Math.abs(volts[n]), Math::max);
        }
      }
    }

    private double across(Element e, double[] volts) {
      return at(e.a(), volts) - at(e.b(), volts);
    }

    private double at(String node, double[] volts) {
      int number = nodes.indexOf(node);
      return number < 0 ? 0 : volts[number];
    }

    /** Diodes are switched until all agree with the voltages across them. */
    private double[] refresh(double phase) {
      double[] volts = solve(phase);
      for (int round = 0; round < 30; round++) {
        boolean changed = false;
        for (int e = 0; e < own.size(); e++) {
          boolean forward = own.get(e).kind() == 'D' && across(own.get(e), volts) > 0;
          changed |= forward != on[e];
          on[e] = forward;
        }
        if (!changed) {
          return volts;
        }
        volts = solve(phase);
      }
      return volts;
    }

    private double[] solve(double phase) {
      int size = nodes.size();
      double[][] matrix = new double[size][size + 1];
      for (int n = 0; n < size; n++) {
        matrix[n][n] = LEAK * 1e-2;
      }
      for (int e = 0; e < own.size(); e++) {
        Element element = own.get(e);
        double siemens =
            switch (element.kind()) {
              case 'W', 'B' -> 1;
              case 'C' -> element.value();
              case 'R' -> 0.05 / element.value();
              default -> on[e] ? 1 : LEAK * 1e-3;
            };
        double driven =
            switch (element.kind()) {
              case 'W' -> element.value() * phase;
              case 'B' -> element.value();
              case 'C' -> held[e];
              default -> 0;
            };
        stamp(matrix, element, siemens, siemens * driven);
      }
      return eliminate(matrix);
    }

    private void stamp(double[][] matrix, Element e, double siemens, double current) {
      int i = nodes.indexOf(e.a());
      int j = nodes.indexOf(e.b());
      int last = nodes.size();
      if (i >= 0) {
        matrix[i][i] += siemens;
        matrix[i][last] += current;
      }
      if (j >= 0) {
        matrix[j][j] += siemens;
        matrix[j][last] -= current;
      }
      if (i >= 0 && j >= 0) {
        matrix[i][j] -= siemens;
        matrix[j][i] -= siemens;
      }
    }
  }

  /** Gaussian elimination with pivots; the last column is the right side. */
  private static double[] eliminate(double[][] m) {
    int size = m.length;
    for (int p = 0; p < size; p++) {
      int best = p;
      for (int r = p + 1; r < size; r++) {
        best = Math.abs(m[r][p]) > Math.abs(m[best][p]) ? r : best;
      }
      double[] row = m[p];
      m[p] = m[best];
      m[best] = row;
      for (int r = p + 1; r < size; r++) {
        double factor = m[r][p] / m[p][p];
        for (int c = p; factor != 0 && c <= size; c++) {
          m[r][c] -= factor * m[p][c];
        }
      }
    }
    double[] x = new double[size];
    for (int r = size - 1; r >= 0; r--) {
      double sum = m[r][size];
      for (int c = r + 1; c < size; c++) {
        sum -= m[r][c] * x[c];
      }
      x[r] = sum / m[r][r];
    }
    return x;
  }
}
