package org.relegend.circuit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.relegend.map.Evidence;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;

/** Finds what one node becomes when some parts are passed through; fewest passes first. */
final class ExtendedNode {
  /** How a node was come to. */
  private record Way(PassList passes, Optional<Evidence> weakest) {
    Way by(Pass pass, Optional<Evidence> in, Optional<Evidence> out) {
      return new Way(passes.and(pass), weaker(weaker(weakest, in), out));
    }
  }

  private final NodeSteps steps;
  private final PinFacts facts;
  private final PassageOptions through;
  private final Map<Node, Way> ways = new LinkedHashMap<>();
  private final Map<PartId, List<String>> undecided = new LinkedHashMap<>();

  ExtendedNode(NodeSteps steps, PinFacts facts, PassageOptions through) {
    this.steps = steps;
    this.facts = facts;
    this.through = through;
  }

  JoinedList from(Collection<Node> nodes) {
    Deque<Node> open = new ArrayDeque<>();
    for (Node node : nodes) {
      ways.put(node, new Way(PassList.EMPTY, Optional.of(Evidence.MEASURED)));
      open.add(node);
    }
    Map<PinRef, JoinedPin> pins = new LinkedHashMap<>();
    while (!open.isEmpty()) {
      Node node = open.remove();
      Way way = ways.getOrDefault(node, new Way(PassList.EMPTY, Optional.empty()));
      for (JoinedPin pin : steps.pinsAt(node)) {
        Optional<Evidence> own = node instanceof Node.OfNet ? pin.evidence() : way.weakest();
        pins.putIfAbsent(
            pin.pin(),
            way.passes().isEmpty() ? pin : pin.by(way.passes(), weaker(way.weakest(), own)));
        if (!through.passages().isEmpty() && steps.mayPass(pin)) {
          pass(node, way, pin, own, open);
        }
      }
    }
    return result(pins);
  }

  private void pass(
      Node node, Way way, JoinedPin pin, Optional<Evidence> evidence, Deque<Node> open) {
    for (NodeStep step : steps.from(node, pin)) {
      if (step.passage().isEmpty() || !through.passes(step.passage().get())) {
        continue;
      }
      if (isClosed(step) && !ways.containsKey(step.to())) {
        Pass pass = new Pass(step.in(), step.out(), step.passage().get());
        ways.put(step.to(), way.by(pass, evidence, evidenceAt(step.out(), step.to())));
        open.add(step.to());
      }
    }
  }

  private boolean isClosed(NodeStep step) {
    if (step.conduction() != Conduction.CONTACT) {
      return true;
    }
    PartId part = step.in().part();
    String rest = facts.kindOf(part).map(Kind::restPosition).orElse("");
    String position = through.positions().getOrDefault(part, rest);
    if (position.isEmpty()) {
      undecided.computeIfAbsent(part, id -> Circuit.contactPositions(facts, id));
    }
    return position.equals(step.position());
  }

  private Optional<Evidence> evidenceAt(PinRef pin, Node node) {
    if (node instanceof Node.OfNet net) {
      return facts
          .map()
          .net(net.net())
          .flatMap(found -> found.member(pin))
          .flatMap(member -> org.relegend.map.Attestation.best(member.evidence()));
    }
    return Optional.of(Evidence.MEASURED);
  }

  private JoinedList result(Map<PinRef, JoinedPin> pins) {
    List<NetId> nets = new ArrayList<>();
    Set<PinRef> drawn = new LinkedHashSet<>();
    for (Node node : ways.keySet()) {
      if (node instanceof Node.OfNet net) {
        nets.add(net.net());
        drawn.addAll(facts.drawnAt(net.net().text()));
      }
    }
    drawn.removeAll(pins.keySet());
    return new JoinedList(
        nets,
        new ArrayList<>(pins.values()),
        drawn.stream().map(facts::pin).toList(),
        undecided.entrySet().stream()
            .map(entry -> new JoinedList.Undecided(entry.getKey(), entry.getValue()))
            .toList());
  }

  private static Optional<Evidence> weaker(Optional<Evidence> a, Optional<Evidence> b) {
    return a.isPresent() && b.isPresent() ? Optional.of(a.get().weaker(b.get())) : Optional.empty();
  }
}
