package org.relegend.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * One element of a circuit.
 *
 * @param name unique in its netlist: "R101", "U101/X"
 * @param part the part it is (of), by which faults name it
 * @param nodes where its terminals are, in the order of its law
 */
public record Device(String name, String part, List<String> nodes, DeviceLaw law) {
  public Device {
    nodes = List.copyOf(nodes);
    if (nodes.size() != law.terminals()) {
      throw new IllegalArgumentException(
          "%s has %d nodes for %d terminals".formatted(name, nodes.size(), law.terminals()));
    }
  }

  /** A part of one element. */
  public static Device of(String name, DeviceLaw law, String... nodes) {
    return new Device(name, name, List.of(nodes), law);
  }

  public Device with(DeviceLaw changed) {
    return new Device(name, part, nodes, changed);
  }

  /** With one terminal on another node. */
  public Device moved(int terminal, String node) {
    List<String> changed = new ArrayList<>(nodes);
    changed.set(terminal, node);
    return new Device(name, part, changed, law);
  }
}
