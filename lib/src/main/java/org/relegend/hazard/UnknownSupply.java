package org.relegend.hazard;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.relegend.circuit.Node;
import org.relegend.circuit.NodeStep;
import org.relegend.map.BoardMap;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.PinRef;
import org.relegend.map.Potential;

/**
 * What is fed by something whose voltage nobody told: windings of transformers that mains or
 * another supply feeds, what looks like mains, nets told to carry a voltage without saying how
 * much, batteries without a value. All that hangs on these is unknown up to where nets tell.
 */
final class UnknownSupply {
  private final CautiousTraversal walk;
  private final MainsReach mains;
  private final Declared declared;
  private final PeakVoltages peaks;
  private final Map<Node, String> reasons = new LinkedHashMap<>();
  private final Set<Node> powered = new LinkedHashSet<>();

  UnknownSupply(
      CautiousTraversal walk, MainsReach mains, PeakVoltages peaks, List<MainsSign> signs) {
    this.walk = walk;
    this.mains = mains;
    this.declared = peaks.declared();
    this.peaks = peaks;
    signs.forEach(this::suspect);
    Map<Node, String> named = named();
    named.forEach(this::enter);
    peaks.nodes().forEach(this::power);
    walk.circuit().map().nets().stream()
        .filter(net -> Hazards.lacksVolts(net.potential()))
        .map(net -> Node.of(net.id()))
        .forEach(node -> enter(node, "no voltage is given for " + name(node)));
    new BatteryStacks(walk, declared).withoutVolts().forEach(this::battery);
    new HighVoltageParts(walk, declared).find(named).forEach(this::enter);
    boolean more = true;
    while (more) {
      more = false;
      for (Part part : transformers()) {
        more |= feed(part);
      }
    }
  }

  private BoardMap map() {
    return walk.circuit().map();
  }

  private String name(Node node) {
    return map().nameOf(node.subject());
  }

  private void suspect(MainsSign sign) {
    MainsSources sources = MainsSources.suspected(walk.circuit(), sign.nodes());
    String reason = map().nameOf(sign.subject()) + " " + sign.sign();
    new MainsFinder(walk, sources)
        .find()
        .nodes()
        .forEach(node -> enter(node, "looks like mains: " + reason));
  }

  /** The nets whose names tell a high voltage, to why they are taken as high. */
  private Map<Node, String> named() {
    HighVoltageName high = new HighVoltageName(VoltageLimits.INSTRUMENTS);
    Map<Node, String> named = new LinkedHashMap<>();
    for (Net net : map().nets()) {
      if (net.potential().nature() == Potential.Nature.UNKNOWN) {
        high.reason(net.name()).ifPresent(why -> named.put(Node.of(net.id()), why));
      }
    }
    return named;
  }

  private void battery(Part part) {
    List<Node> ends = new ArrayList<>(walk.nodesOf(part, "positive"));
    ends.addAll(walk.nodesOf(part, "negative"));
    ends.forEach(node -> enter(node, "no voltage is given for " + map().nameOf(part.id())));
  }

  private List<Part> transformers() {
    return map().parts().stream()
        .filter(part -> walk.isOf(part.id(), "transformer") || isConverter(part))
        .toList();
  }

  /** A module that isolates: what it gives is as unknown as what a winding gives. */
  private boolean isConverter(Part part) {
    return walk.circuit()
        .kindOf(part.id())
        .filter(kind -> kind.family().equals("supply") && !kind.barrier().isEmpty())
        .isPresent();
  }

  /** Whether this part feeds anything that nobody knew of before. */
  private boolean feed(Part part) {
    boolean signal =
        walk.circuit().kindOf(part.id()).filter(k -> k.name().endsWith("-signal")).isPresent();
    int before = reasons.size();
    for (PinRef near : part.pins().stream().map(part::ref).toList()) {
      if (isAny(near, signal ? mains::has : node -> isPowered(node, part))) {
        part.pins().stream()
            .map(part::ref)
            .filter(far -> walk.isolates(part, near, far) && !isShield(part, far))
            .forEach(far -> feed(part, far));
      }
    }
    return reasons.size() > before;
  }

  /** Not by what this transformer feeds itself. */
  private boolean isPowered(Node node, Part part) {
    boolean other = reasons.containsKey(node) && !fedBy(part).equals(reasons.get(node));
    return mains.has(node) || powered.contains(node) || other;
  }

  private String fedBy(Part part) {
    return "fed by %s%s whose voltage nobody told"
        .formatted(isConverter(part) ? "" : "a winding of ", map().nameOf(part.id()));
  }

  private boolean isAny(PinRef pin, Predicate<Node> wanted) {
    return walk.circuit().nodesOf(pin).stream().anyMatch(wanted);
  }

  private boolean isShield(Part part, PinRef pin) {
    return walk.circuit().terminalsOf(part.id()).stream()
        .anyMatch(t -> t.number().equals(pin.pin()) && t.role().equals("screen"));
  }

  private void feed(Part part, PinRef far) {
    walk.circuit().nodesOf(far).forEach(node -> seed(node, fedBy(part)));
  }

  /** Where something of it is told, by the node itself or its winding, it isn't unknown. */
  private void seed(Node node, String reason) {
    boolean stated =
        declared.isTold(node) || peaks.swings().at(node).filter(s -> !s.coupled()).isPresent();
    if (!stated && enter(node, reason)) {
      spread(node, reason);
    }
  }

  private boolean enter(Node node, String reason) {
    return !mains.has(node) && !declared.isTold(node) && reasons.putIfAbsent(node, reason) == null;
  }

  private void spread(Node start, String reason) {
    Deque<Node> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      for (NodeStep step : walk.steps(open.remove())) {
        if (enter(step.to(), reason)) {
          open.add(step.to());
        }
      }
    }
  }

  /** All that direct current reaches from a known voltage: what a converter may work on. */
  private void power(Node start) {
    Deque<Node> open = new ArrayDeque<>();
    if (!declared.isGround(start) && powered.add(start)) {
      open.add(start);
    }
    while (!open.isEmpty()) {
      for (NodeStep step : walk.steps(open.remove())) {
        boolean onwards = step.conduction().passesDirect() && !declared.isGround(step.to());
        if (onwards && powered.add(step.to())) {
          open.add(step.to());
        }
      }
    }
  }

  /** Each node of unknown voltage to why it is. */
  Map<Node, String> reasons() {
    return reasons;
  }

  /** Whether some told voltage explains it and nothing unknown hangs there. */
  boolean isExplained(Node node) {
    return !reasons.containsKey(node) && explained().contains(node);
  }

  private final Set<Node> plain = new LinkedHashSet<>();

  private Set<Node> explained() {
    if (plain.isEmpty()) {
      plain.addAll(walk.from(peaks.nodes(), this::explains));
    }
    return plain;
  }

  private boolean explains(NodeStep step) {
    boolean coil =
        walk.isOf(step.in().part(), "transformer") || walk.isOf(step.in().part(), "inductor");
    return step.conduction().passesDirect()
        && step.conduction() != org.relegend.circuit.Conduction.UNKNOWN
        && !coil
        && !declared.isGround(step.to());
  }
}
