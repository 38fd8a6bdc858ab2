package org.relegend.solve;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Kind;
import org.relegend.map.BoardMap;
import org.relegend.map.Mating;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Potential;

/**
 * What of a map can be solved. Nodes are net ids, or pins as "R101.1" while they are on no net.
 *
 * @param netlist with the known nets as boundaries
 * @param gaps parts that it does without
 * @param open nodes that may have more joined to them than the netlist has: those of gaps, loose
 *     pins, nets of one pin, and those that the state names; known ones are not among them, since
 *     nothing depends on what else hangs there
 */
public record MappedCircuit(Netlist netlist, List<Gap> gaps, Set<String> open) {
  public MappedCircuit {
    gaps = List.copyOf(gaps);
    open = Set.copyOf(open);
  }

  public static MappedCircuit of(Circuit circuit, OperatingState state) {
    return new Builder(circuit, state).result();
  }

  /**
   * By how much a node's volts may be off because of open nodes, where each of those may be
   * anywhere within the span of the known volts, in the first order. Nodes of which there is no
   * solution have no limit.
   */
  public double doubt(OperatingPoint point, String node) {
    if (netlist.known().containsKey(node)) {
      return 0;
    }
    if (point.volts(node).isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    double span = span();
    double sum = 0;
    for (String other : open) {
      sum += Math.abs(other.equals(node) ? 1 : point.follows(node, other)) * span;
    }
    return sum;
  }

  private double span() {
    double low = netlist.known().values().stream().mapToDouble(v -> v).min().orElse(0);
    double high = netlist.known().values().stream().mapToDouble(v -> v).max().orElse(0);
    return Math.max(high - low, 1);
  }

  /** Goes through a map once. */
  private static final class Builder {
    private final Circuit circuit;
    private final OperatingState state;
    private final Map<String, Double> known = new TreeMap<>();
    private final List<Device> devices = new ArrayList<>();
    private final List<Gap> gaps = new ArrayList<>();
    private final Set<String> open = new LinkedHashSet<>();
    private final Set<String> alternating = new LinkedHashSet<>();

    Builder(Circuit circuit, OperatingState state) {
      this.circuit = circuit;
      this.state = state;
      state.known().forEach((net, volts) -> known.put(net.text(), volts));
      state.open().forEach(net -> open.add(net.text()));
    }

    MappedCircuit result() {
      BoardMap map = circuit.map();
      map.nets().forEach(this::net);
      map.parts().forEach(this::part);
      map.matings().forEach(this::mating);
      open.removeAll(known.keySet());
      Netlist netlist = new Netlist(devices, known);
      open.retainAll(netlist.nodes());
      return new MappedCircuit(netlist, gaps, open);
    }

    private void net(Net net) {
      Potential.Nature nature = net.potential().nature();
      if (nature == Potential.Nature.AC || nature == Potential.Nature.MAINS) {
        alternating.add(net.id().text());
      }
      if (net.members().size() < 2) {
        open.add(net.id().text());
      }
    }

    private void part(Part part) {
      PartTerminals terminals = new PartTerminals(circuit, part);
      Optional<Kind> kind = circuit.kindOf(part.id());
      if (kind.isEmpty()) {
        gap(part, terminals, "its kind isn't known");
        return;
      }
      if (terminals.allNodes().stream().anyMatch(alternating::contains)) {
        gap(part, terminals, "it stands on alternating current");
        return;
      }
      PartDevices made =
          new PartDevices(
              part, kind.get(), terminals, state, pin -> PartTerminals.node(circuit, pin));
      if (made.gap().isEmpty()) {
        add(made.devices());
      } else if (isMated(part)) {
        return;
      } else {
        gap(part, terminals, made.gap());
      }
    }

    private boolean isMated(Part part) {
      return circuit.map().matings().stream()
          .anyMatch(mating -> mating.a().equals(part.id()) || mating.b().equals(part.id()));
    }

    private void add(List<Device> made) {
      devices.addAll(made);
      for (Device device : made) {
        for (String node : device.nodes()) {
          boolean pin = node.startsWith(device.part() + ".");
          if (pin && circuit.map().net(new NetId(node)).isEmpty()) {
            open.add(node);
          }
        }
      }
    }

    private void gap(Part part, PartTerminals terminals, String why) {
      gaps.add(new Gap(part.id(), why));
      open.addAll(terminals.allNodes());
    }

    /** Contacts of one number meet. */
    private void mating(Mating mating) {
      Optional<Part> a = circuit.map().part(mating.a());
      Optional<Part> b = circuit.map().part(mating.b());
      if (a.isEmpty() || b.isEmpty()) {
        return;
      }
      for (Pin pin : a.get().pins()) {
        if (b.get().pin(pin.number()).isPresent()) {
          devices.add(
              new Device(
                  a.get().id().text() + "/" + pin.number(),
                  a.get().id().text(),
                  List.of(
                      PartTerminals.node(circuit, new PinRef(a.get().id(), pin.number())),
                      PartTerminals.node(circuit, new PinRef(b.get().id(), pin.number()))),
                  new Resistance(0.02)));
        }
      }
    }
  }
}
