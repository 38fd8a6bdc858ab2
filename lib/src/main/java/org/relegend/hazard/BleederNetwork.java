package org.relegend.hazard;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Conduction;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Node;
import org.relegend.circuit.PinPath;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;

/**
 * The fixed resistors of a circuit as a network of their own, to find by which of them a capacitor
 * discharges. Other parts conduct too, but nobody can rely on that. No more than the {@value
 * #NODES} nodes nearest to the capacitor are taken into account: leaving resistors out can only
 * raise the resistance (Rayleigh's monotonicity law, Doyle and Snell, Random Walks and Electric
 * Networks), so that the time told gets longer.
 */
final class BleederNetwork {
  static final int NODES = 150;

  private static final Set<String> VARYING = Set.of("ldr", "pot", "dual-pot");

  /** Numbered, since two alike may lie in parallel inside one part. */
  private record Edge(int number, Node a, Node b, double ohms, PartId part) {
    Node other(Node node) {
      return a.equals(node) ? b : a;
    }
  }

  private final Map<Node, List<Edge>> edges = new HashMap<>();
  private int count;

  BleederNetwork(Circuit circuit, MergedNodes wires) {
    for (Part part : circuit.map().parts()) {
      Optional<Kind> kind = circuit.kindOf(part.id());
      OptionalDouble ohms = kind.isPresent() ? ohms(kind.get(), part) : OptionalDouble.empty();
      if (kind.isPresent() && ohms.isPresent()) {
        for (PinPath path : kind.get().pathsOf(part)) {
          if (path.conduction() == Conduction.OHMIC && isFixed(kind.get(), part, path)) {
            enter(circuit, wires, part, path, ohms.getAsDouble());
          }
        }
      }
    }
  }

  private static OptionalDouble ohms(Kind kind, Part part) {
    return kind.family().equals("resistor") && !kind.name().equals("ldr")
        ? WorstCaseValues.ohms(part)
        : OptionalDouble.empty();
  }

  /** Of a pot only the whole track has the resistance that its value tells. */
  private static boolean isFixed(Kind kind, Part part, PinPath path) {
    return !VARYING.contains(kind.name())
        || kind.terminalsOf(part).stream()
            .filter(terminal -> path.touches(terminal.number()))
            .noneMatch(terminal -> terminal.role().equals("wiper"));
  }

  private void enter(Circuit circuit, MergedNodes wires, Part part, PinPath path, double ohms) {
    for (Node from : circuit.nodesOf(new PinRef(part.id(), path.from()))) {
      for (Node to : circuit.nodesOf(new PinRef(part.id(), path.to()))) {
        Edge edge = new Edge(count++, wires.head(from), wires.head(to), ohms, part.id());
        if (!edge.a().equals(edge.b())) {
          edges.computeIfAbsent(edge.a(), node -> new ArrayList<>()).add(edge);
          edges.computeIfAbsent(edge.b(), node -> new ArrayList<>()).add(edge);
        }
      }
    }
  }

  /** The resistance from one head to another; empty where no resistors lead there. */
  Optional<StoredCharge.Bleeder> between(Node a, Node b) {
    Map<Node, Integer> numbers = nearest(a, b);
    return isLinked(a, b, numbers) ? Optional.of(solve(a, b, numbers)) : Optional.empty();
  }

  /** The nodes nearest to either end, numbered; b is the last, for it is the ground. */
  private Map<Node, Integer> nearest(Node a, Node b) {
    Map<Node, Integer> numbers = new LinkedHashMap<>();
    Deque<Node> open = new ArrayDeque<>(List.of(a, b));
    numbers.put(a, 0);
    numbers.put(b, -1);
    while (!open.isEmpty()) {
      Node node = open.remove();
      for (Edge edge : edges.getOrDefault(node, List.of())) {
        Node other = edge.other(node);
        if (numbers.size() < NODES && numbers.putIfAbsent(other, numbers.size() - 1) == null) {
          open.add(other);
        }
      }
    }
    return numbers;
  }

  private boolean isLinked(Node a, Node b, Map<Node, Integer> within) {
    Set<Node> seen = new HashSet<>(Set.of(a));
    Deque<Node> open = new ArrayDeque<>(seen);
    while (!open.isEmpty()) {
      Node node = open.remove();
      for (Edge edge : edges.getOrDefault(node, List.of())) {
        if (within.containsKey(edge.other(node)) && seen.add(edge.other(node))) {
          open.add(edge.other(node));
        }
      }
    }
    return seen.contains(b);
  }

  /** One ampere in at a and out at b: the voltage at a is the resistance (nodal analysis). */
  private StoredCharge.Bleeder solve(Node a, Node b, Map<Node, Integer> numbers) {
    int size = numbers.size() - 1;
    DMatrixRMaj conductance = new DMatrixRMaj(size, size);
    List<Edge> used = used(numbers, a, b);
    for (Edge edge : used) {
      stamp(conductance, numbers, edge);
    }
    for (int i = 0; i < size; i++) {
      if (conductance.get(i, i) == 0) {
        conductance.set(i, i, 1); // beyond b, or a dead end: no current, any voltage
      }
    }
    DMatrixRMaj current = new DMatrixRMaj(size, 1);
    current.set(0, 0, 1);
    DMatrixRMaj volts = new DMatrixRMaj(size, 1);
    if (!CommonOps_DDRM.solve(conductance, current, volts)) {
      throw new IllegalStateException("a linked network of resistors has no solution");
    }
    Map<PartId, Double> currents = new LinkedHashMap<>();
    for (Edge edge : used) {
      double drop = at(volts, numbers, edge.a()) - at(volts, numbers, edge.b());
      currents.merge(edge.part(), Math.abs(drop) / edge.ohms(), Math::max);
    }
    List<PartId> parts =
        currents.entrySet().stream()
            .filter(entry -> entry.getValue() > 1e-9)
            .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
            .map(Map.Entry::getKey)
            .toList();
    return new StoredCharge.Bleeder(volts.get(0, 0), parts);
  }

  /** Edges among the numbered nodes that hang together with both ends, each once. */
  private List<Edge> used(Map<Node, Integer> numbers, Node a, Node b) {
    Set<Node> seen = new LinkedHashSet<>(List.of(a, b));
    Deque<Node> open = new ArrayDeque<>(seen);
    Set<Edge> found = new LinkedHashSet<>();
    while (!open.isEmpty()) {
      for (Edge edge : edges.getOrDefault(open.remove(), List.of())) {
        if (numbers.containsKey(edge.a()) && numbers.containsKey(edge.b())) {
          found.add(edge);
          List.of(edge.a(), edge.b()).stream().filter(seen::add).forEach(open::add);
        }
      }
    }
    return List.copyOf(found);
  }

  private static void stamp(DMatrixRMaj matrix, Map<Node, Integer> numbers, Edge edge) {
    int i = numbers.getOrDefault(edge.a(), -1);
    int j = numbers.getOrDefault(edge.b(), -1);
    double siemens = 1 / edge.ohms();
    if (i >= 0) {
      matrix.add(i, i, siemens);
    }
    if (j >= 0) {
      matrix.add(j, j, siemens);
    }
    if (i >= 0 && j >= 0) {
      matrix.add(i, j, -siemens);
      matrix.add(j, i, -siemens);
    }
  }

  private static double at(DMatrixRMaj volts, Map<Node, Integer> numbers, Node node) {
    int number = numbers.getOrDefault(node, -1);
    return number < 0 ? 0 : volts.get(number, 0);
  }
}
