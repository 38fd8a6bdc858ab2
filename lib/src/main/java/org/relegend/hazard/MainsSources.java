package org.relegend.hazard;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Node;
import org.relegend.circuit.Terminal;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PinRef;
import org.relegend.map.Potential;

/**
 * Where mains comes in, and where protective earth is: what nets are declared to be, and what pins
 * of inlets and of parts made for the mains say. Where they disagree, mains goes before.
 */
final class MainsSources {
  private static final String EARTH_ROLE = "protective earth";

  private final Map<NetId, Net> nets = new LinkedHashMap<>();
  private final Set<Node> sources = new LinkedHashSet<>();
  private final Set<Node> earths = new LinkedHashSet<>();
  private final List<MainsReach.Contradiction> contradictions = new ArrayList<>();

  MainsSources(Circuit circuit) {
    for (Net net : circuit.map().nets()) {
      nets.put(net.id(), net);
      if (net.potential().nature() == Potential.Nature.MAINS) {
        sources.add(Node.of(net.id()));
      } else if (net.potential().nature() == Potential.Nature.EARTH) {
        earths.add(Node.of(net.id()));
      }
    }
    List<PinRef> live = new ArrayList<>();
    List<PinRef> made = new ArrayList<>();
    for (Part part : circuit.map().parts()) {
      circuit.kindOf(part.id()).ifPresent(kind -> sort(circuit, part, kind, live, made));
    }
    live.forEach(pin -> circuit.nodesOf(pin).forEach(node -> enter(node, pin, true)));
    made.forEach(pin -> circuit.nodesOf(pin).forEach(node -> enter(node, pin, false)));
    earths.stream().filter(sources::contains).forEach(this::contradictEarth);
    earths.removeAll(sources);
  }

  private MainsSources(Set<Node> sources, MainsSources known) {
    this.sources.addAll(sources);
    this.earths.addAll(known.earths);
    this.nets.putAll(known.nets);
    this.earths.removeAll(sources);
  }

  /** As if mains came in at these nodes, and nowhere else. */
  static MainsSources suspected(Circuit circuit, Collection<Node> nodes) {
    return new MainsSources(new LinkedHashSet<>(nodes), new MainsSources(circuit));
  }

  private void sort(Circuit circuit, Part part, Kind kind, List<PinRef> live, List<PinRef> made) {
    if (!kind.has(Kind.Trait.INLET) && !kind.has(Kind.Trait.MAINS)) {
      return;
    }
    for (Terminal terminal : circuit.terminalsOf(part.id())) {
      PinRef pin = new PinRef(part.id(), terminal.number());
      String role = terminal.role();
      if (role.equals("live") || role.equals("neutral")) {
        live.add(pin);
      } else if (role.equals("mains")) {
        made.add(pin);
      } else if (kind.has(Kind.Trait.INLET) && role.equals(EARTH_ROLE)) {
        earths.addAll(circuit.nodesOf(pin));
      } else if (kind.has(Kind.Trait.INLET)) {
        live.add(pin); // nobody knows which it is
      }
    }
  }

  /** A pin that brings mains in, or one of a part that is made for mains. */
  private void enter(Node node, PinRef pin, boolean brings) {
    Potential.Nature nature = nature(node);
    boolean other =
        nature != Potential.Nature.UNKNOWN
            && nature != Potential.Nature.MAINS
            && nature != Potential.Nature.REFERENCE;
    if (other) {
      contradictions.add(
          new MainsReach.Contradiction(
              pin,
              ((Node.OfNet) node).net(),
              brings
                  ? "brings the mains in, but its net is declared to be " + word(nature)
                  : "is made for the mains, but its net is declared to be " + word(nature)));
    }
    if (brings || !earths.contains(node)) {
      sources.add(node);
    }
  }

  private void contradictEarth(Node node) {
    boolean stated = contradictions.stream().anyMatch(known -> Node.of(known.net()).equals(node));
    if (!stated && node instanceof Node.OfNet net) {
      PinRef first = nets.getOrDefault(net.net(), Net.named(net.net())).pins().get(0);
      contradictions.add(
          new MainsReach.Contradiction(
              first, net.net(), "is joined to protective earth and to the mains at once"));
    }
  }

  private static String word(Potential.Nature nature) {
    return nature == Potential.Nature.EARTH
        ? EARTH_ROLE
        : nature.word().toUpperCase(java.util.Locale.ROOT);
  }

  Potential.Nature nature(Node node) {
    return potential(node).nature();
  }

  Potential potential(Node node) {
    Net net = node instanceof Node.OfNet of ? nets.get(of.net()) : null;
    return net == null ? Potential.UNKNOWN : net.potential();
  }

  Set<Node> sources() {
    return sources;
  }

  boolean isEarth(Node node) {
    return earths.contains(node);
  }

  List<MainsReach.Contradiction> contradictions() {
    return contradictions;
  }
}
