package org.relegend.hazard;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Conduction;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Node;
import org.relegend.circuit.Step;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;

/**
 * From node to node the cautious way: as the circuit has it, and besides between all pins of a
 * transformer of which nobody said to which winding they belong. Usual numbers prove nothing there:
 * every maker counts windings in his own way (common practice).
 */
final class Walk {
  private final Circuit circuit;

  Walk(Circuit circuit) {
    this.circuit = circuit;
  }

  Circuit circuit() {
    return circuit;
  }

  List<PinRef> pins(Node node) {
    return node instanceof Node.OfNet net
        ? circuit.map().net(net.net()).map(Net::pins).orElse(List.of())
        : List.of(((Node.OfPin) node).pin());
  }

  List<Step> steps(Node node) {
    List<Step> steps = new ArrayList<>(circuit.steps(node));
    for (PinRef pin : pins(node)) {
      circuit
          .map()
          .part(pin.part())
          .filter(this::hasWindings)
          .ifPresent(part -> addDoubtful(steps, node, pin, part));
    }
    return steps;
  }

  private void addDoubtful(List<Step> steps, Node node, PinRef in, Part part) {
    for (Pin other : part.pins()) {
      if (!other.number().equals(in.pin()) && !(isTold(part, in.pin()) && isTold(part, other))) {
        PinRef out = part.ref(other);
        for (Node to : circuit.nodesOf(out)) {
          if (!to.equals(node)) {
            steps.add(new Step(node, in, out, to, Conduction.UNKNOWN, true, "", Optional.empty()));
          }
        }
      }
    }
  }

  private boolean hasWindings(Part part) {
    return circuit
        .kindOf(part.id())
        .filter(kind -> kind.family().equals("transformer") && !kind.barrier().isEmpty())
        .isPresent();
  }

  private static boolean isTold(Part part, String number) {
    return part.pin(number).filter(pin -> isTold(part, pin)).isPresent();
  }

  private static boolean isTold(Part part, Pin pin) {
    return !pin.role().isBlank() || !part.sectionsOf(pin.number()).isEmpty();
  }

  /** Whether the part keeps these two pins apart, as declared by its kind and its roles. */
  boolean isolates(Part part, PinRef a, PinRef b) {
    boolean told = !hasWindings(part) || isTold(part, a.pin()) && isTold(part, b.pin());
    return told
        && circuit
            .kindOf(part.id())
            .filter(kind -> kind.isolates(part, a.pin(), b.pin()))
            .isPresent();
  }

  /** Whether a step leads through a capacitor as such, not through a junction's or a gate's. */
  boolean isCapacitor(Step step) {
    return step.conduction() == Conduction.CAPACITIVE && isOf(step.in().part(), "capacitor");
  }

  boolean isOf(PartId part, String family) {
    return circuit.kindOf(part).map(Kind::family).filter(family::equals).isPresent();
  }

  /** All that these steps lead to. */
  Set<Node> from(Collection<Node> nodes, Predicate<Step> allowed) {
    Set<Node> found = new LinkedHashSet<>(nodes);
    Deque<Node> open = new ArrayDeque<>(found);
    while (!open.isEmpty()) {
      for (Step step : steps(open.remove())) {
        if (allowed.test(step) && found.add(step.to())) {
          open.add(step.to());
        }
      }
    }
    return found;
  }
}
