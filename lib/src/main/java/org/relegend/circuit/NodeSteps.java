package org.relegend.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.relegend.map.Mating;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;

/** The ways from each node to the next. */
final class NodeSteps {
  private final PinFacts facts;
  private final CircuitGraph graph;
  private final Map<PartId, List<PartId>> mates = new HashMap<>();

  NodeSteps(PinFacts facts, CircuitGraph graph) {
    this.facts = facts;
    this.graph = graph;
    for (Mating mating : facts.map().matings()) {
      mates.computeIfAbsent(mating.a(), part -> new ArrayList<>(1)).add(mating.b());
      mates.computeIfAbsent(mating.b(), part -> new ArrayList<>(1)).add(mating.a());
    }
  }

  /** The pins at a node; a loose pin is there by itself if its part has it. */
  List<JoinedPin> pinsAt(Node node) {
    if (node instanceof Node.OfNet net) {
      return graph.pinsOn(net.net());
    }
    PinRef pin = ((Node.OfPin) node).pin();
    return facts.has(pin) ? List.of(facts.pin(pin)) : List.of();
  }

  /** The node of a pin: its net, or itself while it is on none; by mistake several. */
  List<Node> nodesOf(PinRef pin) {
    List<Net> nets = facts.index().netsOf(pin);
    return nets.isEmpty()
        ? List.of(Node.of(pin))
        : nets.stream().map(net -> Node.of(net.id())).toList();
  }

  List<NodeStep> from(Node node) {
    List<NodeStep> steps = new ArrayList<>();
    pinsAt(node).forEach(pin -> steps.addAll(from(node, pin)));
    return steps;
  }

  /** The steps that begin at one pin of a node. */
  List<NodeStep> from(Node node, JoinedPin pin) {
    List<NodeStep> steps = new ArrayList<>();
    addThrough(steps, node, pin.pin());
    for (PartId mate : mates.getOrDefault(pin.pin().part(), List.of())) {
      PinRef out = new PinRef(mate, pin.pin().pin());
      if (facts.has(out) || !facts.index().netsOf(out).isEmpty()) {
        add(steps, node, pin.pin(), out, wire(pin.pin(), out), Optional.of(Passage.CONNECTOR));
      }
    }
    for (NetId net : pin.nets().size() > 1 ? pin.nets() : List.<NetId>of()) {
      Node other = Node.of(net);
      if (!other.equals(node)) {
        steps.add(
            new NodeStep(
                node, pin.pin(), pin.pin(), other, Conduction.WIRE, true, "", Optional.empty()));
      }
    }
    return steps;
  }

  /** Whether an extended node could pass anything at this pin: a quick look before the steps. */
  boolean mayPass(JoinedPin pin) {
    PartId part = pin.pin().part();
    return mates.containsKey(part)
        || facts.isZeroOhm(part)
        || facts.kindOf(part).flatMap(Kind::passage).isPresent();
  }

  private static PinPath wire(PinRef in, PinRef out) {
    return new PinPath(in.pin(), out.pin(), Conduction.WIRE, "");
  }

  private void addThrough(List<NodeStep> steps, Node node, PinRef in) {
    Optional<Passage> passage = facts.kindOf(in.part()).flatMap(Kind::passage);
    boolean zero = facts.isZeroOhm(in.part());
    for (PinPath path : facts.pathsAt(in)) {
      PinRef out = new PinRef(in.part(), path.other(in.pin()));
      if (zero && path.conduction() == Conduction.OHMIC) {
        add(steps, node, in, out, wire(in, out), Optional.of(Passage.ZERO_OHM));
      } else {
        boolean direct =
            path.conduction() == Conduction.WIRE || path.conduction() == Conduction.CONTACT;
        add(steps, node, in, out, path, direct ? passage : Optional.empty());
      }
    }
  }

  private void add(
      List<NodeStep> steps,
      Node from,
      PinRef in,
      PinRef out,
      PinPath path,
      Optional<Passage> passage) {
    boolean along = path.conduction() != Conduction.JUNCTION || path.from().equals(in.pin());
    for (Node to : nodesOf(out)) {
      if (!to.equals(from)) {
        steps.add(
            new NodeStep(from, in, out, to, path.conduction(), along, path.position(), passage));
      }
    }
  }
}
