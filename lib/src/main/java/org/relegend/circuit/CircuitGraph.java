package org.relegend.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.Graphs;
import org.jgrapht.graph.Multigraph;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Subject;

/**
 * The graph itself: a vertex for each net and for each section of a part (or the part where it has
 * none), an edge for each pin on a net. A pin that works in two sections has an edge to both.
 */
final class CircuitGraph {
  /** Compared by identity, which is quicker than by subject. */
  private static final class Vertex {
    private final Subject subject;
    private final String section;

    Vertex(Subject subject, String section) {
      this.subject = subject;
      this.section = section;
    }
  }

  /** A pin on a net; only the first of a pin's edges counts it. */
  private static final class Edge {
    private final JoinedPin pin;
    private final boolean first;

    Edge(JoinedPin pin, boolean first) {
      this.pin = pin;
      this.first = first;
    }
  }

  /** A net's vertex with the edges that the graph has at it, so that asking takes one look-up. */
  private record AtNet(Vertex vertex, List<NetId> self, Set<Edge> edges) {}

  private final Graph<Vertex, Edge> graph = new Multigraph<>(null, null, false);
  private final Map<NetId, AtNet> nets = new HashMap<>();

  /** The sections of each part: few, so that they are found by going through them. */
  private final Map<PartId, List<Vertex>> elements = new HashMap<>();

  CircuitGraph(PinFacts facts) {
    for (Part part : facts.map().parts()) {
      for (Terminal terminal : facts.terminalsOf(part.id())) {
        element(part.id(), terminal.section());
      }
      if (part.pins().isEmpty()) {
        element(part.id(), "");
      }
    }
    for (Net net : facts.map().nets()) {
      Vertex vertex = new Vertex(Subject.of(net.id()), "");
      graph.addVertex(vertex);
      for (Net.Member member : net.members()) {
        join(vertex, facts.pin(member.pin(), member.evidence()));
      }
      nets.put(net.id(), new AtNet(vertex, List.of(net.id()), graph.edgesOf(vertex)));
    }
  }

  private void join(Vertex net, JoinedPin pin) {
    PartId part = pin.pin().part();
    boolean first = true;
    for (Terminal terminal : pin.terminals()) {
      graph.addEdge(net, element(part, terminal.section()), new Edge(pin, first));
      first = false;
    }
    if (first) {
      graph.addEdge(net, element(part, ""), new Edge(pin, true));
    }
  }

  private Vertex element(PartId part, String section) {
    List<Vertex> known = elements.computeIfAbsent(part, id -> new ArrayList<>(1));
    for (Vertex vertex : known) {
      if (vertex.section.equals(section)) {
        return vertex;
      }
    }
    Subject subject = section.isEmpty() ? Subject.of(part) : new Subject.OfSection(part, section);
    Vertex vertex = new Vertex(subject, section);
    known.add(vertex);
    graph.addVertex(vertex);
    return vertex;
  }

  boolean has(NetId net) {
    return nets.containsKey(net);
  }

  /** The pins on a net, in its order; none for a net that isn't there. */
  List<JoinedPin> pinsOn(NetId net) {
    AtNet found = nets.get(net);
    return found == null ? List.of() : pins(found);
  }

  /** A net with its pins; an empty answer for a net that isn't there. */
  JoinedList joined(NetId net, List<JoinedPin> alsoDrawnHere) {
    AtNet found = nets.get(net);
    return found == null
        ? new JoinedList(List.of(), List.of(), alsoDrawnHere, List.of())
        : new JoinedList(found.self(), pins(found), alsoDrawnHere, List.of());
  }

  private static List<JoinedPin> pins(AtNet net) {
    JoinedPin[] pins = new JoinedPin[net.edges().size()];
    int count = 0;
    for (Edge edge : net.edges()) {
      if (edge.first) {
        pins[count++] = edge.pin;
      }
    }
    return List.of(count == pins.length ? pins : Arrays.copyOf(pins, count));
  }

  /** The sections and whole parts on a net, each once. */
  List<Subject> elementsOn(NetId net) {
    AtNet found = nets.get(net);
    return found == null ? List.of() : neighbours(List.of(found.vertex()));
  }

  /** The nets of a part, in order. */
  List<NetId> netsOf(PartId part) {
    return nets(elements.getOrDefault(part, List.of()));
  }

  List<NetId> netsOf(PartId part, String section) {
    return nets(
        elements.getOrDefault(part, List.of()).stream()
            .filter(vertex -> vertex.section.equals(section))
            .toList());
  }

  private List<NetId> nets(Iterable<Vertex> vertices) {
    return neighbours(vertices).stream()
        .map(subject -> ((Subject.OfNet) subject).net())
        .sorted()
        .toList();
  }

  private List<Subject> neighbours(Iterable<Vertex> vertices) {
    Set<Subject> found = new LinkedHashSet<>();
    for (Vertex vertex : vertices) {
      Graphs.neighborListOf(graph, vertex).forEach(other -> found.add(other.subject));
    }
    return List.copyOf(found);
  }
}
