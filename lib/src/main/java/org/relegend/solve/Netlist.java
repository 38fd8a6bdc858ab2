package org.relegend.solve;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * A circuit to be solved.
 *
 * @param devices names are unique
 * @param known volts of the nodes that are given: the reference, rails, nodes that were read
 */
public record Netlist(List<Device> devices, Map<String, Double> known) {
  public Netlist {
    devices = List.copyOf(devices);
    known = Collections.unmodifiableMap(new TreeMap<>(known));
    Set<String> names = new HashSet<>();
    for (Device device : devices) {
      if (!names.add(device.name())) {
        throw new IllegalArgumentException("two devices are called " + device.name());
      }
    }
    known.forEach(
        (node, volts) -> {
          if (!Double.isFinite(volts)) {
            throw new IllegalArgumentException("node %s can't be at %s V".formatted(node, volts));
          }
        });
  }

  /** All nodes, the known ones too, in the order of the devices. */
  public List<String> nodes() {
    Set<String> nodes = new LinkedHashSet<>();
    devices.forEach(device -> nodes.addAll(device.nodes()));
    return List.copyOf(nodes);
  }

  public Optional<Device> device(String name) {
    return devices.stream().filter(device -> device.name().equals(name)).findFirst();
  }

  /** With this device in the place of the one of its name. */
  public Netlist replaced(Device changed) {
    return new Netlist(
        devices.stream()
            .map(device -> device.name().equals(changed.name()) ? changed : device)
            .toList(),
        known);
  }

  /** With one device more. */
  public Netlist with(Device added) {
    List<Device> more = new ArrayList<>(devices);
    more.add(added);
    return new Netlist(more, known);
  }

  /** With a node given, in the place of what was known of it. */
  public Netlist withKnown(String node, double volts) {
    Map<String, Double> more = new TreeMap<>(known);
    more.put(node, volts);
    return new Netlist(devices, more);
  }

  /** With other devices. */
  public Netlist withDevices(List<Device> changed) {
    return new Netlist(changed, known);
  }

  /**
   * The circuit in pieces that are joined by known nodes only, so that each can be solved by
   * itself. Devices between known nodes are in none of them, as nothing depends on them.
   */
  public List<Netlist> islands() {
    Map<String, String> heads = new LinkedHashMap<>();
    for (Device device : devices) {
      String first = "";
      for (String node : device.nodes()) {
        if (!known.containsKey(node)) {
          heads.putIfAbsent(node, node);
          String head = head(heads, node);
          heads.put(head, first.isEmpty() ? head : head(heads, first));
          first = node;
        }
      }
    }
    Map<String, List<Device>> pieces = new LinkedHashMap<>();
    for (Device device : devices) {
      device.nodes().stream()
          .filter(heads::containsKey)
          .findFirst()
          .ifPresent(
              node ->
                  pieces.computeIfAbsent(head(heads, node), key -> new ArrayList<>()).add(device));
    }
    return pieces.values().stream().map(this::piece).toList();
  }

  private Netlist piece(Collection<Device> some) {
    Map<String, Double> used = new TreeMap<>();
    for (Device device : some) {
      for (String node : device.nodes()) {
        Double volts = known.get(node);
        if (volts != null) {
          used.put(node, volts);
        }
      }
    }
    return new Netlist(List.copyOf(some), used);
  }

  private static String head(Map<String, String> heads, String node) {
    String head = node;
    String next = heads.getOrDefault(head, head);
    while (!next.equals(head)) {
      head = next;
      next = heads.getOrDefault(head, head);
    }
    return head;
  }
}
