package org.relegend.hazard;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.relegend.circuit.Node;
import org.relegend.map.Part;

/**
 * What batteries in series add up to, from the voltages of their values: against the reference
 * where one end lies there, else against the lowest end.
 */
final class BatteryStacks {
  /** One battery of known voltage between two nodes. */
  private record Cell(Node positive, Node negative, double volts) {}

  private final CautiousTraversal walk;
  private final Declared declared;
  private final Map<Node, List<Cell>> cells = new LinkedHashMap<>();

  BatteryStacks(CautiousTraversal walk, Declared declared) {
    this.walk = walk;
    this.declared = declared;
    for (Part part : walk.circuit().map().parts()) {
      if (isBattery(walk, part)) {
        WorstCaseValues.volts(part).ifPresent(volts -> enter(part, volts));
      }
    }
  }

  static boolean isBattery(CautiousTraversal walk, Part part) {
    return walk.circuit()
        .kindOf(part.id())
        .filter(kind -> kind.name().equals("battery"))
        .isPresent();
  }

  private void enter(Part part, double volts) {
    for (Node positive : walk.nodesOf(part, "positive")) {
      for (Node negative : walk.nodesOf(part, "negative")) {
        Cell cell = new Cell(positive, negative, volts);
        cells.computeIfAbsent(positive, node -> new ArrayList<>()).add(cell);
        cells.computeIfAbsent(negative, node -> new ArrayList<>()).add(cell);
      }
    }
  }

  /** The voltage of each end of each stack; ends whose voltage nets tell are left out. */
  Map<Node, Double> volts() {
    Map<Node, Double> found = new LinkedHashMap<>();
    cells.keySet().stream().filter(declared::isFixed).forEach(node -> follow(node, found));
    cells.keySet().stream()
        .filter(node -> !found.containsKey(node))
        .toList()
        .forEach(node -> follow(node, found));
    found.keySet().removeIf(declared::isFixed);
    return found;
  }

  private void follow(Node start, Map<Node, Double> found) {
    if (found.containsKey(start)) {
      return;
    }
    Map<Node, Double> stack = new HashMap<>();
    stack.put(start, declared.isFixed(start) ? base(start) : 0.0);
    Deque<Node> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      Node node = open.remove();
      double here = stack.getOrDefault(node, 0.0);
      for (Node near : walk.wired(node)) {
        if (stack.putIfAbsent(near, here) == null) {
          open.add(near);
        }
      }
      for (Cell cell : cells.getOrDefault(node, List.of())) {
        boolean up = cell.negative().equals(node);
        Node other = up ? cell.positive() : cell.negative();
        if (stack.putIfAbsent(other, here + (up ? cell.volts() : -cell.volts())) == null) {
          open.add(other);
        }
      }
    }
    boolean held = stack.keySet().stream().anyMatch(declared::isFixed);
    double lowest = held ? 0 : stack.values().stream().mapToDouble(v -> v).min().orElse(0);
    stack.forEach((node, volts) -> found.putIfAbsent(node, volts - lowest));
  }

  private double base(Node node) {
    return declared.potential(node).volts();
  }

  /** The batteries of which nobody said the voltage. */
  List<Part> withoutVolts() {
    return walk.circuit().map().parts().stream()
        .filter(part -> isBattery(walk, part))
        .filter(part -> WorstCaseValues.volts(part).equals(OptionalDouble.empty()))
        .toList();
  }
}
