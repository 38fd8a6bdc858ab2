package org.relegend.solve;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Terminals that have lost their node, and are joined only to each other: an open joint, a broken
 * conductor.
 */
public record SeveredTerminals(
    String part, FailureMode mode, String text, List<DeviceTerminal> terminals) implements Fault {
  private static final String NODE = "severed";

  public SeveredTerminals {
    terminals = List.copyOf(terminals);
  }

  @Override
  public Netlist appliedTo(Netlist healthy) {
    Map<String, Device> moved = new HashMap<>();
    for (DeviceTerminal terminal : terminals) {
      Device device =
          moved.containsKey(terminal.device())
              ? moved.get(terminal.device())
              : healthy
                  .device(terminal.device())
                  .orElseThrow(
                      () ->
                          new IllegalArgumentException("there is no device " + terminal.device()));
      moved.put(terminal.device(), device.moved(terminal.index(), NODE));
    }
    return healthy.withDevices(
        healthy.devices().stream()
            .map(device -> moved.getOrDefault(device.name(), device))
            .toList());
  }
}
