package org.relegend.circuit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.relegend.map.BoardMap;
import org.relegend.map.MapIndex;
import org.relegend.map.NameRules;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * The circuit of one map: what is joined at a node, and what can be reached from where. Nets are as
 * built; where the drawing differs, answers say so. Made in one pass over the map (about a second
 * for 100,000 pins) and valid for that map only; may be used by several threads at once.
 *
 * <p>A map may be half made or wrong: nothing here throws for what stands in it. What no circuit
 * can have is told by {@link #faults()}, and the rest is answered as far as it goes.
 */
public final class Circuit {
  private final PinFacts facts;
  private final CircuitGraph graph;
  private final NodeSteps steps;

  private Circuit(MapIndex index, Kinds kinds) {
    this.facts = new PinFacts(index, kinds);
    this.graph = new CircuitGraph(facts);
    this.steps = new NodeSteps(facts, graph);
  }

  /** With the kinds that come with the program. */
  public static Circuit of(BoardMap map) {
    return of(map, Kinds.standard());
  }

  public static Circuit of(BoardMap map, Kinds kinds) {
    return new Circuit(new MapIndex(map), kinds);
  }

  public BoardMap map() {
    return facts.map();
  }

  /** The map from the other end, for those who need more of it. */
  public MapIndex index() {
    return facts.index();
  }

  /** All pins on a net; an empty answer for a net that isn't there. */
  public JoinedList joined(NetId net) {
    return graph.joined(net, drawnAt(net.text()));
  }

  private List<JoinedPin> drawnAt(String net) {
    List<PinRef> drawn = facts.drawnAt(net);
    return drawn.isEmpty() ? List.of() : drawn.stream().map(facts::pin).toList();
  }

  /**
   * All pins on a net and on those that it is one with through these parts.
   *
   * @throws IllegalArgumentException where a position is given that the part hasn't got
   */
  public JoinedList joined(NetId net, PassageOptions through) {
    return joined(graph.has(net) ? List.of(Node.of(net)) : List.of(), through);
  }

  /** All that is joined to a pin, itself included; an empty answer for a pin that isn't there. */
  public JoinedList joined(PinRef pin) {
    return joined(pin, PassageOptions.NOTHING);
  }

  /**
   * All that is joined to a pin, also through these parts.
   *
   * @throws IllegalArgumentException where a position is given that the part hasn't got
   */
  public JoinedList joined(PinRef pin, PassageOptions through) {
    return joined(steps.nodesOf(pin), through);
  }

  /**
   * All that is joined at the node that a person named. For a name that only the drawing has, the
   * pins that it has there, as {@link JoinedList#alsoDrawnHere()}.
   *
   * @throws IllegalArgumentException where a position is given that the part hasn't got
   */
  public JoinedList joined(NodeName name, PassageOptions through) {
    if (name instanceof NodeName.OfDrawnNet drawn) {
      return new JoinedList(List.of(), List.of(), drawnAt(drawn.name()), List.of());
    }
    if (name instanceof NodeName.OfNet net) {
      return joined(net.net(), through);
    }
    return joined(((NodeName.OfPin) name).pin(), through);
  }

  private JoinedList joined(Collection<Node> nodes, PassageOptions through) {
    through
        .positions()
        .forEach(
            (part, position) -> {
              List<String> known = positionsOf(part);
              if (!known.contains(position)) {
                throw new IllegalArgumentException(
                    known.isEmpty()
                        ? "%s has no contacts that could stand at \"%s\""
                            .formatted(map().nameOf(part), position)
                        : "%s can't stand at \"%s\": its positions are %s"
                            .formatted(map().nameOf(part), position, String.join(", ", known)));
              }
            });
    return new ExtendedNode(steps, facts, through).from(nodes);
  }

  /** The node of a pin: its net, or itself while it is on none; by mistake several. */
  public List<Node> nodesOf(PinRef pin) {
    return steps.nodesOf(pin);
  }

  /** The parts on a net, each once, in the order of its pins. */
  public List<PartId> partsOn(NetId net) {
    Set<PartId> parts = new LinkedHashSet<>();
    graph.pinsOn(net).forEach(pin -> parts.add(pin.pin().part()));
    return List.copyOf(parts);
  }

  /** The sections on a net, and the parts that have no sections or only supply pins there. */
  public List<Subject> sectionsOn(NetId net) {
    return graph.elementsOn(net);
  }

  /** The nets that a part is on, in order. */
  public List<NetId> netsOf(PartId part) {
    return graph.netsOf(part);
  }

  /** The nets that one section of a part is on, in order. */
  public List<NetId> netsOf(PartId part, String section) {
    return graph.netsOf(part, section);
  }

  public Optional<Kind> kindOf(PartId part) {
    return facts.kindOf(part);
  }

  /** What each pin of a part is, from the map, its kind and the usual pinout. */
  public List<Terminal> terminalsOf(PartId part) {
    return facts.terminalsOf(part);
  }

  /**
   * The positions that a switch or relay can be said to stand in, {@link PassageOptions#OPEN} last;
   * empty for other parts.
   */
  public List<String> positionsOf(PartId part) {
    List<String> positions = new ArrayList<>(contactPositions(facts, part));
    if (!positions.isEmpty()) {
      positions.add(PassageOptions.OPEN);
    }
    return positions;
  }

  static List<String> contactPositions(PinFacts facts, PartId part) {
    Set<String> positions = new LinkedHashSet<>();
    for (Terminal terminal : facts.terminalsOf(part)) {
      for (PinPath path : facts.pathsAt(new PinRef(part, terminal.number()))) {
        if (path.conduction() == Conduction.CONTACT) {
          positions.add(path.position());
        }
      }
    }
    return List.copyOf(positions);
  }

  /** Every way to a next node: through parts, plugged connectors, pins on two nets by mistake. */
  public List<NodeStep> steps(Node from) {
    return steps.from(from);
  }

  /** What can be reached from these nodes by allowed steps, and which steps were refused. */
  public ReachableNodes reach(Collection<Node> from, Predicate<NodeStep> allowed) {
    return ReachableNodes.from(from, steps::from, allowed);
  }

  /** What lies between two nodes, by allowed steps. */
  public Subnetwork between(Node from, Node to, Predicate<NodeStep> allowed) {
    return Subnetwork.between(from, to, steps::from, allowed);
  }

  /** What stands in the map but can't be in any circuit, in order of nets and pins. */
  public List<CircuitFault> faults() {
    return CircuitFaultFinder.faults(facts);
  }

  /** The nets that only the drawing has, in order. */
  public List<String> drawnOnlyNets() {
    Set<String> names = new TreeSet<>(NameRules.NATURAL);
    names.addAll(facts.drawnNets());
    map().nets().forEach(net -> names.remove(net.id().text()));
    return List.copyOf(names);
  }
}
