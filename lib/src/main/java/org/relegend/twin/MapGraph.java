package org.relegend.twin;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Terminal;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/** The graph of one map, with what its numbers stand for. */
final class MapGraph {
  final Circuit circuit;
  final PinGraph graph;

  /** The pin at each edge of an element. */
  final List<PinRef> pins = new ArrayList<>();

  private final Map<Subject, Integer> elements = new HashMap<>();
  private final Map<Subject, Integer> nets = new HashMap<>();

  MapGraph(Circuit circuit) {
    this.circuit = circuit;
    PinGraph.Builder builder = new PinGraph.Builder();
    for (Net net : circuit.map().nets()) {
      Subject subject = Subject.of(net.id());
      nets.put(subject, builder.net(subject, PinGraph.BOTH));
    }
    ElementSimilarity likeness = new ElementSimilarity();
    for (Part part : circuit.map().parts()) {
      add(builder, part, likeness);
    }
    graph = builder.build();
  }

  private void add(PinGraph.Builder builder, Part part, ElementSimilarity likeness) {
    Optional<Kind> kind = circuit.kindOf(part.id());
    Map<String, List<Terminal>> sections = new LinkedHashMap<>();
    for (Terminal terminal : circuit.terminalsOf(part.id())) {
      sections.computeIfAbsent(terminal.section(), name -> new ArrayList<>()).add(terminal);
    }
    boolean sectioned = sections.keySet().stream().anyMatch(name -> !name.isEmpty());
    sections.forEach(
        (name, terminals) -> {
          // supply pins of a part with sections tell nothing of the sections' work
          if (!sectioned || !name.isEmpty()) {
            Subject subject =
                name.isEmpty() ? Subject.of(part.id()) : new Subject.OfSection(part.id(), name);
            long look = likeness.kind(part, kind, terminals);
            elements.put(
                subject, builder.element(subject, look, likeness.value(part, kind), PinGraph.BOTH));
            terminals.forEach(terminal -> addPin(builder, part, terminal, likeness));
          }
        });
  }

  private void addPin(
      PinGraph.Builder builder, Part part, Terminal terminal, ElementSimilarity likeness) {
    PinRef pin = new PinRef(part.id(), terminal.number());
    for (Net net : circuit.index().netsOf(pin)) {
      Integer number = nets.get(Subject.of(net.id()));
      if (number != null) {
        builder.pin(number, likeness.roleNumber(terminal));
        pins.add(pin);
      }
    }
  }

  /** The number of a section, or of a part that has none. */
  Optional<Integer> element(Subject subject) {
    return Optional.ofNullable(elements.get(subject));
  }

  Optional<Integer> net(Subject subject) {
    return Optional.ofNullable(nets.get(subject));
  }

  /** All elements of a part, in its order. */
  List<Integer> elementsOf(Part part) {
    List<Integer> found = new ArrayList<>();
    element(Subject.of(part.id())).ifPresent(found::add);
    if (found.isEmpty()) {
      for (Terminal terminal : circuit.terminalsOf(part.id())) {
        if (!terminal.section().isEmpty()) {
          element(new Subject.OfSection(part.id(), terminal.section()))
              .filter(number -> !found.contains(number))
              .ifPresent(found::add);
        }
      }
    }
    return found;
  }
}
