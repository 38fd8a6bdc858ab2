package org.relegend.bench.suspect;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jgrapht.Graph;
import org.jgrapht.Graphs;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedMultigraph;
import org.jgrapht.graph.EdgeReversedGraph;
import org.jgrapht.graph.MaskSubgraph;
import org.jgrapht.graph.SimpleDirectedGraph;
import org.jgrapht.traverse.BreadthFirstIterator;
import org.relegend.bench.rule.CircuitElement;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.circuit.Conduction;
import org.relegend.circuit.Node;
import org.relegend.circuit.NodeStep;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Potential;

/**
 * Which way signals run: from the inputs, through each part by the roles of its pins, to the
 * outputs. Passive parts lead away from the source, and never into a net that an output drives.
 * Steps back towards the source are feedback and kept apart, so that loops don't run in circles.
 * Supply rails and the reference are no part of it.
 */
public final class SignalPath {
  /** One step from net to net through a part. */
  public record Edge(NetId from, NetId to, PartId part) {}

  private final UnitReadings unit;
  private final Map<NetId, Integer> depth = new TreeMap<>();
  private final Graph<NetId, Edge> onward = new DirectedMultigraph<>(null, null, false);
  private final List<Edge> feedback = new ArrayList<>();
  private final Set<NetId> sources = new LinkedHashSet<>();
  private final Set<NetId> sinks = new LinkedHashSet<>();

  private SignalPath(UnitReadings unit) {
    this.unit = unit;
  }

  public static SignalPath of(UnitReadings unit) {
    SignalPath path = new SignalPath(unit);
    Map<NetId, List<Edge>> all = path.edges();
    path.findEnds(all);
    path.measure(all);
    path.divide(all);
    return path;
  }

  /** The nets that signals come in at. */
  public Set<NetId> sources() {
    return Set.copyOf(sources);
  }

  /** The nets of outputs that are reached from a source, in order. */
  public List<NetId> sinks() {
    return sinks.stream().filter(depth::containsKey).sorted().toList();
  }

  /** The nets reached, in the order of the signal. */
  public List<NetId> nets() {
    return depth.keySet().stream()
        .sorted(java.util.Comparator.comparing(this::depth).thenComparing(net -> net))
        .toList();
  }

  public boolean has(NetId net) {
    return depth.containsKey(net);
  }

  /** How many parts a net lies behind the source; the largest number where it isn't reached. */
  public int depth(NetId net) {
    return depth.getOrDefault(net, Integer.MAX_VALUE);
  }

  public List<Edge> from(NetId net) {
    return has(net) ? List.copyOf(onward.outgoingEdgesOf(net)) : List.of();
  }

  public List<Edge> into(NetId net) {
    return has(net) ? List.copyOf(onward.incomingEdgesOf(net)) : List.of();
  }

  /** Steps back towards the source. */
  public List<Edge> feedback() {
    return List.copyOf(feedback);
  }

  /** All nets before this one, itself not among them. */
  public Set<NetId> upstream(NetId net) {
    return upstream(net, end -> false);
  }

  /**
   * The nets before this one, itself not among them, nearest first.
   *
   * @param ends nets that nothing before them is looked at
   */
  Set<NetId> upstream(NetId net, Predicate<NetId> ends) {
    return reached(
        new EdgeReversedGraph<>(
            new MaskSubgraph<>(
                onward, vertex -> false, edge -> !edge.to().equals(net) && ends.test(edge.to()))),
        net);
  }

  /** All nets behind this one, itself not among them. */
  public Set<NetId> downstream(NetId net) {
    return reached(onward, net);
  }

  private Set<NetId> reached(Graph<NetId, Edge> graph, NetId start) {
    Set<NetId> seen = new LinkedHashSet<>();
    if (has(start)) {
      new BreadthFirstIterator<>(graph, start).forEachRemaining(seen::add);
      seen.remove(start);
    }
    return seen;
  }

  /** The parts that a signal passes from one net to the other. */
  public Set<PartId> between(NetId good, NetId bad) {
    Set<NetId> nets = new LinkedHashSet<>(downstream(good));
    nets.add(good);
    Set<NetId> before = new LinkedHashSet<>(upstream(bad));
    before.add(bad);
    nets.retainAll(before);
    Set<PartId> parts = new LinkedHashSet<>();
    for (NetId net : nets) {
      from(net).stream()
          .filter(edge -> nets.contains(edge.to()))
          .forEach(edge -> parts.add(edge.part()));
    }
    return parts;
  }

  private Map<NetId, List<Edge>> edges() {
    Map<NetId, List<Edge>> all = new LinkedHashMap<>();
    for (Net net : unit.map().nets()) {
      if (carries(net.id())) {
        for (NodeStep step : unit.circuit().steps(Node.of(net.id()))) {
          if (step.to() instanceof Node.OfNet to && passive(step) && !driven(to.net())) {
            add(all, net.id(), to.net(), step.in().part());
          }
        }
      }
    }
    for (Part part : unit.map().parts()) {
      active(all, part);
    }
    return all;
  }

  private void add(Map<NetId, List<Edge>> all, NetId from, NetId to, PartId part) {
    if (!from.equals(to) && carries(from) && carries(to)) {
      all.computeIfAbsent(from, net -> new ArrayList<>()).add(new Edge(from, to, part));
    }
  }

  private boolean carries(NetId net) {
    Potential.Nature nature =
        unit.map().net(net).map(Net::potential).orElse(Potential.UNKNOWN).nature();
    return !unit.isRail(net)
        && nature != Potential.Nature.MAINS
        && nature != Potential.Nature.EARTH
        && nature != Potential.Nature.REFERENCE;
  }

  private boolean passive(NodeStep step) {
    Conduction conduction = step.conduction();
    boolean junction =
        conduction == Conduction.JUNCTION
            && step.along()
            && unit.isFamily(step.in().part(), "diode");
    return junction
        || conduction == Conduction.OHMIC
        || conduction == Conduction.CAPACITIVE && !unit.isFamily(step.in().part(), "transistor")
        || conduction == Conduction.WINDING
        || conduction == Conduction.WIRE
        || conduction == Conduction.CONTACT;
  }

  private static boolean isOut(String role) {
    return role.equals("out") || role.endsWith("out");
  }

  private boolean driven(NetId net) {
    return unit.pins(net).stream()
        .filter(pin -> !unit.isFamily(pin.part(), "switch"))
        .anyMatch(pin -> unit.terminals(pin).stream().anyMatch(t -> isOut(t.role())));
  }

  private void active(Map<NetId, List<Edge>> all, Part part) {
    boolean transistor = unit.isFamily(part.id(), "transistor");
    boolean valve = unit.isFamily(part.id(), "valve");
    for (CircuitElement element : unit.elements(part.id())) {
      if (transistor || valve) {
        for (String control : List.of("base", "gate", "grid")) {
          for (String end :
              List.of("collector", "drain", "anode", "emitter", "source", "cathode")) {
            through(all, element, control, end);
          }
        }
        through(all, element, "emitter", "collector");
        through(all, element, "source", "drain");
        through(all, element, "cathode", "anode");
      } else if (!unit.isFamily(part.id(), "switch")) {
        for (String out : element.pins().keySet()) {
          if (isOut(out)) {
            element.pins().keySet().stream()
                .filter(role -> !isOut(role))
                .forEach(role -> through(all, element, role, out));
          }
        }
      }
    }
    if (unit.isFamily(part.id(), "transformer")) {
      transformer(all, part);
    }
  }

  private void through(Map<NetId, List<Edge>> all, CircuitElement element, String from, String to) {
    element
        .net(from)
        .ifPresent(a -> element.net(to).ifPresent(b -> add(all, a, b, element.part())));
  }

  private void transformer(Map<NetId, List<Edge>> all, Part part) {
    for (int i = 1; i < part.sections().size(); i++) {
      for (String in : part.sections().get(0).roles().keySet()) {
        for (String out : part.sections().get(i).roles().keySet()) {
          unit.netOf(new PinRef(part.id(), in))
              .ifPresent(
                  a ->
                      unit.netOf(new PinRef(part.id(), out))
                          .ifPresent(b -> add(all, a, b, part.id())));
        }
      }
    }
  }

  /** Connectors that say so are inputs or outputs; others are outputs where an output is near. */
  private void findEnds(Map<NetId, List<Edge>> all) {
    Set<NetId> unsaid = new LinkedHashSet<>();
    for (Part part : unit.map().parts()) {
      if (!unit.isFamily(part.id(), "connector")) {
        continue;
      }
      String words = (part.value() + " " + part.note()).toLowerCase(Locale.ROOT);
      for (NetId net : unit.circuit().netsOf(part.id())) {
        if (carries(net)) {
          if (words.matches("(?s).*\\b(in|input)\\b.*")) {
            sources.add(net);
          } else if (words.matches("(?s).*\\b(out|output)\\b.*")) {
            sinks.add(net);
          } else {
            unsaid.add(net);
          }
        }
      }
    }
    for (NetId net : unsaid) {
      boolean nearOutput =
          driven(net)
              || all.values().stream()
                  .flatMap(List::stream)
                  .anyMatch(edge -> edge.to().equals(net) && driven(edge.from()));
      (nearOutput || !all.containsKey(net) ? sinks : sources).add(net);
    }
  }

  /** Depths are counted from one vertex before all sources, which the empty one stands for. */
  private void measure(Map<NetId, List<Edge>> all) {
    Graph<Optional<NetId>, DefaultEdge> steps = new SimpleDirectedGraph<>(DefaultEdge.class);
    steps.addVertex(Optional.empty());
    sources.forEach(net -> Graphs.addEdgeWithVertices(steps, Optional.empty(), Optional.of(net)));
    for (List<Edge> edges : all.values()) {
      for (Edge edge : edges) {
        Graphs.addEdgeWithVertices(steps, Optional.of(edge.from()), Optional.of(edge.to()));
      }
    }
    var nearestFirst = new BreadthFirstIterator<>(steps, Optional.<NetId>empty());
    nearestFirst.forEachRemaining(
        vertex -> vertex.ifPresent(net -> depth.put(net, nearestFirst.getDepth(vertex) - 1)));
    depth.keySet().forEach(onward::addVertex);
  }

  private void divide(Map<NetId, List<Edge>> all) {
    Set<Edge> edges = new LinkedHashSet<>();
    all.values().forEach(edges::addAll);
    for (Edge edge : edges) {
      if (has(edge.from()) && depth(edge.to()) > depth(edge.from())) {
        onward.addEdge(edge.from(), edge.to(), edge);
      } else if (has(edge.from()) && depth(edge.to()) < depth(edge.from())) {
        Edge turned = new Edge(edge.to(), edge.from(), edge.part());
        if (!edges.contains(turned)) { // a part that leads both ways leads onward
          feedback.add(edge);
        }
      }
    }
  }
}
