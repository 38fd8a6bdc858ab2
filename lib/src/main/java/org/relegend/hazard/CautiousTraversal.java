package org.relegend.hazard;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Conduction;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Node;
import org.relegend.circuit.NodeStep;
import org.relegend.circuit.Passage;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;

/**
 * From node to node the cautious way: as the circuit has it, and besides between a pin of what
 * isolates, or of a switch of several poles, and all its other pins, where nobody said to which
 * side or pole it belongs. Usual numbers prove nothing there: every maker counts windings and poles
 * in his own way (common practice).
 */
final class CautiousTraversal {
  /** Words for a transformer of one winding, which isolates nothing (common practice). */
  private static final Pattern ONE_WINDING =
      Pattern.compile(
          "(?iu)\\bauto\\b|auto[\\s_-]?(trans|traf|form)|vari(ac\\b|able[\\s_-]+trans)|\\bspar(\\b|-|trans|traf)"
              + "|(regel|stell)[\\s_-]?tra(ns|f)");

  private static final Set<String> RECTIFIERS = Set.of("valve-diode", "valve-diode-direct");

  private final Circuit circuit;
  private final Map<Node, List<NodeStep>> found = new HashMap<>();

  CautiousTraversal(Circuit circuit) {
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

  /** Found once for each node: everything here asks again and again. */
  List<NodeStep> steps(Node node) {
    List<NodeStep> known = found.get(node);
    if (known == null) {
      known = List.copyOf(find(node));
      found.put(node, known);
    }
    return known;
  }

  private List<NodeStep> find(Node node) {
    List<NodeStep> steps = new ArrayList<>(circuit.steps(node));
    for (PinRef pin : pins(node)) {
      circuit
          .map()
          .part(pin.part())
          .filter(this::keepsApart)
          .ifPresent(part -> addDoubtful(steps, node, pin, part));
    }
    return steps;
  }

  private void addDoubtful(List<NodeStep> steps, Node node, PinRef in, Part part) {
    for (Pin other : part.pins()) {
      if (!other.number().equals(in.pin()) && !(isTold(part, in.pin()) && isTold(part, other))) {
        PinRef out = part.ref(other);
        for (Node to : circuit.nodesOf(out)) {
          if (!to.equals(node)) {
            steps.add(
                new NodeStep(node, in, out, to, Conduction.UNKNOWN, true, "", Optional.empty()));
          }
        }
      }
    }
  }

  private boolean keepsApart(Part part) {
    return circuit
        .kindOf(part.id())
        .filter(kind -> !kind.barrier().isEmpty() || hasPoles(kind))
        .isPresent();
  }

  private static boolean hasPoles(Kind kind) {
    return kind.sectioned() && kind.passage().filter(Passage.SWITCH::equals).isPresent();
  }

  private boolean isTold(Part part, String number) {
    return part.pin(number).filter(pin -> isTold(part, pin)).isPresent();
  }

  /** Whether it is known where the pin belongs; one that leads nowhere belongs anywhere. */
  boolean isTold(Part part, Pin pin) {
    return !hasOneWinding(part)
        && circuit.kindOf(part.id()).filter(kind -> isTold(kind, part, pin)).isPresent();
  }

  /**
   * Whether any word about a transformer says that its windings are one, whatever its roles say.
   */
  private boolean hasOneWinding(Part part) {
    return isOf(part.id(), "transformer")
        && Stream.of(part.kind(), part.value(), part.note())
            .anyMatch(text -> ONE_WINDING.matcher(text).find());
  }

  private boolean isTold(Kind kind, Part part, Pin pin) {
    boolean placed =
        kind.barrier().isEmpty()
            ? kind.tellsSection(part, pin)
            : kind.tellsSide(part, pin.number()) && !isGridTap(kind, part, pin);
    return placed || kind.role(pin.role()).filter("nc"::equals).isPresent();
  }

  /** "Screen" at a valve's pin is the tap of a winding for its screen grid, not a shield. */
  private boolean isGridTap(Kind kind, Part part, Pin pin) {
    return kind.role(pin.role()).filter("screen"::equals).isPresent()
        && circuit.nodesOf(part.ref(pin)).stream()
            .flatMap(node -> pins(node).stream())
            .anyMatch(other -> isOf(other.part(), "valve"));
  }

  /** Whether the part keeps these two pins apart, as declared by its kind and its roles. */
  boolean isolates(Part part, PinRef a, PinRef b) {
    return isTold(part, a.pin())
        && isTold(part, b.pin())
        && circuit
            .kindOf(part.id())
            .filter(kind -> kind.isolates(part, a.pin(), b.pin()))
            .isPresent();
  }

  /** Whether a step leads through a capacitor as such, not through a junction's or a gate's. */
  boolean isCapacitor(NodeStep step) {
    return step.conduction() == Conduction.CAPACITIVE && isOf(step.in().part(), "capacitor");
  }

  /** Whether current surely flows this way while all works, whatever its direction. */
  boolean passesSurely(NodeStep step) {
    return switch (step.conduction()) {
      case WIRE, CONTACT, OHMIC, WINDING, UNKNOWN -> true;
      default -> false;
    };
  }

  /** Whether a step leads through a diode, of glass or of silicon, as such. */
  boolean isDiode(NodeStep step) {
    return isRectifier(step)
        || step.conduction() == Conduction.JUNCTION
            && (isOf(step.in().part(), "diode") || isOf(step.in().part(), "rectifier"));
  }

  /** Whether a step leads through a valve diode from anode to cathode, or to filament, or back. */
  boolean isRectifier(NodeStep step) {
    return step.conduction() == Conduction.GATED
        && circuit
            .kindOf(step.in().part())
            .filter(kind -> RECTIFIERS.contains(kind.name()))
            .isPresent();
  }

  /** Whether a step comes to a filament that is a cathode: it carries more than its heating. */
  boolean isToFilament(NodeStep step) {
    return isRectifier(step) && hasRole(step.out(), "filament");
  }

  /** Whether a step through a diode goes with its current. */
  boolean isAlong(NodeStep step) {
    return isRectifier(step) ? hasRole(step.in(), "anode") : step.along();
  }

  private boolean hasRole(PinRef pin, String role) {
    return circuit.terminalsOf(pin.part()).stream()
        .anyMatch(t -> t.number().equals(pin.pin()) && t.role().equals(role));
  }

  /** The nodes of a part's pins of this role. */
  List<Node> nodesOf(Part part, String role) {
    return part.pins().stream()
        .map(part::ref)
        .filter(pin -> hasRole(pin, role))
        .flatMap(pin -> circuit.nodesOf(pin).stream())
        .toList();
  }

  /** The nodes next to this one by wire, fuse, contact or link. */
  List<Node> wired(Node node) {
    return steps(node).stream()
        .filter(
            step -> step.conduction() == Conduction.WIRE || step.conduction() == Conduction.CONTACT)
        .map(NodeStep::to)
        .toList();
  }

  boolean isOf(PartId part, String family) {
    return circuit.kindOf(part).map(Kind::family).filter(family::equals).isPresent();
  }

  /** All that these steps lead to. */
  Set<Node> from(Collection<Node> nodes, Predicate<NodeStep> allowed) {
    Set<Node> found = new LinkedHashSet<>(nodes);
    Deque<Node> open = new ArrayDeque<>(found);
    while (!open.isEmpty()) {
      for (NodeStep step : steps(open.remove())) {
        if (allowed.test(step) && found.add(step.to())) {
          open.add(step.to());
        }
      }
    }
    return found;
  }
}
