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
  private final Set<Node> fed = new LinkedHashSet<>();

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
    int before = fed.size();
    for (PinRef near : part.pins().stream().map(part::ref).toList()) {
      if (isAny(near, signal ? mains::has : node -> isPowered(node, part))) {
        part.pins().stream()
            .map(part::ref)
            .filter(far -> isApart(part, near, far) && !isShield(part, far))
            .forEach(far -> feed(part, far));
      }
    }
    return fed.size() > before;
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
    for (Node node : walk.circuit().nodesOf(far)) {
      if (!isStated(node, part, far) && enterFed(node, fedBy(part))) {
        spread(node, fedBy(part));
      }
    }
  }

  /**
   * Where something of it is told, by the node itself or its winding, it isn't unknown. What
   * another winding of the part gives may reach it over a shared ground, and tells nothing of this
   * one.
   */
  private boolean isStated(Node node, Part part, PinRef far) {
    return declared.isTold(node)
        || peaks
            .swings()
            .at(node)
            .filter(swing -> !swing.coupled())
            .filter(swing -> !isOfOtherWinding(swing.source(), part, far))
            .isPresent();
  }

  /** Whether nothing within the part leads from one pin to the other: they are two windings. */
  private boolean isApart(Part part, PinRef a, PinRef b) {
    return !a.equals(b)
        && (walk.isolates(part, a, b)
            || walk.circuit().nodesOf(a).stream()
                .flatMap(node -> walk.steps(node).stream())
                .noneMatch(step -> step.in().equals(a) && step.out().equals(b)));
  }

  private boolean isOfOtherWinding(Node source, Part part, PinRef far) {
    return part.pins().stream()
        .map(part::ref)
        .filter(pin -> isApart(part, pin, far))
        .anyMatch(pin -> walk.circuit().nodesOf(pin).contains(source));
  }

  private boolean enter(Node node, String reason) {
    return !mains.has(node) && !declared.isTold(node) && reasons.putIfAbsent(node, reason) == null;
  }

  private boolean enterFed(Node node, String reason) {
    if (mains.has(node) || declared.isTold(node) || !fed.add(node)) {
      return false;
    }
    reasons.putIfAbsent(node, reason);
    return true;
  }

  private void spread(Node start, String reason) {
    Deque<Node> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      for (NodeStep step : walk.steps(open.remove())) {
        if (enterFed(step.to(), reason)) {
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

  /** Whether a winding or module feeds it whose voltage nobody told. */
  boolean isFed(Node node) {
    return fed.contains(node);
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
