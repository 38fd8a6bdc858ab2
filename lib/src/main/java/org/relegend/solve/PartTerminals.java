package org.relegend.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Node;
import org.relegend.circuit.Terminal;
import org.relegend.map.Part;
import org.relegend.map.PinRef;

/** Where the terminals of one part are, by section and role. */
final class PartTerminals {
  private final Map<String, Map<String, List<String>>> sections = new LinkedHashMap<>();

  PartTerminals(Circuit circuit, Part part) {
    for (Terminal terminal : circuit.terminalsOf(part.id())) {
      String node = node(circuit, new PinRef(part.id(), terminal.number()));
      sections
          .computeIfAbsent(terminal.section(), name -> new LinkedHashMap<>())
          .computeIfAbsent(terminal.role(), role -> new ArrayList<>())
          .add(node);
    }
  }

  /** A pin's net, or the pin itself while it is on none. */
  static String node(Circuit circuit, PinRef pin) {
    List<Node> nodes = circuit.nodesOf(pin);
    return nodes.size() == 1 && nodes.get(0) instanceof Node.OfNet net
        ? net.net().text()
        : pin.toString();
  }

  /** The names of its elements; one empty name for a part of one. */
  List<String> elements() {
    List<String> named = sections.keySet().stream().filter(name -> !name.isEmpty()).toList();
    return named.isEmpty() ? List.of("") : named;
  }

  /** All nodes of a role in a section, or among the pins that stand outside of any. */
  List<String> all(String section, String role) {
    List<String> own = sections.getOrDefault(section, Map.of()).getOrDefault(role, List.of());
    return own.isEmpty() ? sections.getOrDefault("", Map.of()).getOrDefault(role, List.of()) : own;
  }

  Optional<String> one(String section, String role) {
    return all(section, role).stream().findFirst();
  }

  /** The nodes of these roles, in their order; nothing where one is missing. */
  Optional<List<String>> of(String section, String... roles) {
    List<String> nodes = new ArrayList<>();
    Map<String, Integer> used = new LinkedHashMap<>();
    for (String role : roles) {
      List<String> there = all(section, role);
      int next = used.merge(role, 1, Integer::sum) - 1;
      if (next >= there.size()) {
        return Optional.empty();
      }
      nodes.add(there.get(next));
    }
    return Optional.of(nodes);
  }

  List<String> allNodes() {
    List<String> nodes = new ArrayList<>();
    sections.values().forEach(roles -> roles.values().forEach(nodes::addAll));
    return nodes;
  }
}
