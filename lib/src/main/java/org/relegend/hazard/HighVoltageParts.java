package org.relegend.hazard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.relegend.circuit.Conduction;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Node;
import org.relegend.circuit.NodeStep;
import org.relegend.circuit.Terminal;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.PinRef;

/**
 * Nodes at parts that usually work at high voltage (the trait high-voltage of their kind), also
 * where no supply is drawn yet; and those of a transistor that switches a transformer's winding. On
 * from there by all that conducts plainly, up to ground and to nets whose voltage is told (common
 * practice).
 */
final class HighVoltageParts {
  /** Electrodes that usually lie near ground. */
  private static final Set<String> LOW =
      Set.of("heater", "heater_tap", "grid", "suppressor", "coating", "nc");

  private static final Set<String> GROUND =
      Set.of("gnd", "0v", "ground", "earth", "chassis", "pe", "agnd", "dgnd");

  /** Common practice. */
  private static final double MOST_BIAS_OHMS = 10e3;

  private final CautiousTraversal walk;
  private final Declared declared;
  private final Map<Node, String> reasons = new LinkedHashMap<>();

  HighVoltageParts(CautiousTraversal walk, Declared declared) {
    this.walk = walk;
    this.declared = declared;
  }

  /**
   * Each such node to why it is one.
   *
   * @param named nodes whose names tell a high voltage; what hangs on them is one too
   */
  Map<Node, String> find(Map<Node, String> named) {
    named.forEach(
        (node, why) ->
            spread(
                node,
                "hangs on %s: its name tells a high voltage"
                    .formatted(walk.circuit().map().nameOf(node.subject()))));
    walk.circuit().map().parts().forEach(this::enter);
    return reasons;
  }

  private void enter(Part part) {
    walk.circuit().kindOf(part.id()).ifPresent(kind -> enter(part, kind));
  }

  private void enter(Part part, Kind kind) {
    String name = walk.circuit().map().nameOf(part.id());
    boolean high = kind.has(Kind.Trait.HIGH_VOLTAGE);
    for (Terminal terminal : walk.circuit().terminalsOf(part.id())) {
      List<Node> nodes = walk.circuit().nodesOf(new PinRef(part.id(), terminal.number()));
      if (high && isHigh(kind, terminal) && !isBiased(kind, terminal, nodes)) {
        nodes.forEach(
            node -> spread(node, "%s (%s) may work at high voltage".formatted(name, kind.name())));
      }
      if (Set.of("collector", "drain").contains(terminal.role())) {
        nodes.stream()
            .filter(this::isSwitched)
            .forEach(
                node -> spread(node, name + " switches a transformer whose supply nobody told"));
      }
    }
  }

  private boolean isHigh(Kind kind, Terminal terminal) {
    return kind.family().equals("optocoupler")
        ? terminal.role().startsWith("terminal_")
        : !LOW.contains(terminal.role());
  }

  /** A cathode's own resistor is small; one of a follower or a long-tailed pair is not. */
  private boolean isBiased(Kind kind, Terminal terminal, List<Node> nodes) {
    return kind.role("grid").isPresent()
        && terminal.role().equals("cathode")
        && nodes.stream()
            .flatMap(node -> walk.steps(node).stream())
            .filter(step -> step.conduction() == Conduction.OHMIC && isGround(step.to()))
            .anyMatch(step -> ohms(step) <= MOST_BIAS_OHMS);
  }

  private double ohms(NodeStep step) {
    return walk.circuit()
        .map()
        .part(step.in().part())
        .map(WorstCaseValues::ohms)
        .orElse(OptionalDouble.empty())
        .orElse(Double.POSITIVE_INFINITY);
  }

  private boolean isSwitched(Node node) {
    List<NodeStep> windings =
        walk.steps(node).stream()
            .filter(step -> walk.isOf(step.in().part(), "transformer"))
            .filter(step -> !isSignal(step))
            .toList();
    return !windings.isEmpty() && windings.stream().noneMatch(step -> isKnown(step.to()));
  }

  private boolean isSignal(NodeStep step) {
    return walk.circuit()
        .kindOf(step.in().part())
        .filter(kind -> kind.name().endsWith("-signal"))
        .isPresent();
  }

  private void spread(Node start, String reason) {
    List<Node> open = new ArrayList<>(List.of(start));
    Set<Node> seen = new LinkedHashSet<>();
    while (!open.isEmpty()) {
      Node node = open.remove(open.size() - 1);
      if (!isKnown(node) && seen.add(node)) {
        reasons.putIfAbsent(node, reason);
        walk.steps(node).stream().filter(this::leadsOn).map(NodeStep::to).forEach(open::add);
      }
    }
  }

  private boolean leadsOn(NodeStep step) {
    boolean heater =
        walk.circuit().terminalsOf(step.in().part()).stream()
            .anyMatch(t -> t.number().equals(step.in().pin()) && t.role().startsWith("heater"));
    return walk.passesSurely(step) && !heater || walk.isDiode(step);
  }

  /** Told, ground, or at the battery itself. */
  private boolean isKnown(Node node) {
    return declared.isTold(node)
        || isGround(node)
        || walk.pins(node).stream().anyMatch(pin -> walk.isOf(pin.part(), "supply"));
  }

  private boolean isGround(Node node) {
    return declared.isGround(node)
        || node instanceof Node.OfNet net
            && walk.circuit()
                .map()
                .net(net.net())
                .map(Net::name)
                .filter(name -> GROUND.contains(name.toLowerCase(Locale.ROOT).strip()))
                .isPresent();
  }
}
