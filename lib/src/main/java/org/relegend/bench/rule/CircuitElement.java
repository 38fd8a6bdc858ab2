package org.relegend.bench.rule;

import java.util.Map;
import java.util.Optional;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;

/**
 * One element of a part in its circuit: a transistor, one half of an amplifier.
 *
 * @param section its name; empty where the part has just one
 * @param pins each role to its pin; supply pins that sections share among them
 */
public record CircuitElement(
    UnitReadings unit, PartId part, String section, Map<String, PinRef> pins) {
  public CircuitElement {
    pins = Map.copyOf(pins);
  }

  public Optional<PinRef> pin(String role) {
    return Optional.ofNullable(pins.get(role));
  }

  public Optional<NetId> net(String role) {
    return pin(role).flatMap(unit::netOf);
  }

  /** The voltage at a role, where it is known. */
  public Optional<NetVoltage> volts(String role) {
    return net(role).flatMap(unit::volts);
  }

  /** What a healthy unit has there. */
  public Optional<NetVoltage> healthy(String role) {
    return net(role).flatMap(net -> unit.isRail(net) ? unit.volts(net) : unit.healthy(net));
  }

  /** "U101 (Ta)", "Q101". */
  public String name() {
    return section.isEmpty() ? unit.name(part) : "%s (%s)".formatted(unit.name(part), section);
  }
}
