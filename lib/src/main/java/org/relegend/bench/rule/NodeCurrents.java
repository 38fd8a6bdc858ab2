package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.relegend.circuit.Terminal;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.marking.Quantity;
import org.relegend.marking.Tolerance;
import org.relegend.marking.ValueReading;

/**
 * The currents that resistors carry into one net, and what else is joined there. Kirchhoff: all
 * currents into a node add up to nothing, so what the resistors leave over flows in the rest.
 *
 * @param amps sum of the resistors' currents into the net
 * @param tolerance what the sum may be off by: resistors' tolerances and the meter, in amperes
 * @param capacitors their pins at the net
 * @param inputs pins that take next to no current: gates and the inputs of amplifiers
 * @param devices all other pins: junctions, supplies, what isn't known
 * @param complete whether every resistor's current is known
 */
record NodeCurrents(
    NetId net,
    double volts,
    double amps,
    double tolerance,
    List<Branch> branches,
    List<PinRef> capacitors,
    List<PinRef> inputs,
    List<PinRef> devices,
    boolean complete) {
  /** Of a resistor that tells no tolerance (common practice for film, 5 %). */
  static final double USUAL_TOLERANCE = 0.05;

  /** One resistor; its current counts into the net. */
  record Branch(PartId part, NetId other, double volts, double ohms, double amps, double slack) {}

  NodeCurrents {
    branches = List.copyOf(branches);
    capacitors = List.copyOf(capacitors);
    inputs = List.copyOf(inputs);
    devices = List.copyOf(devices);
  }

  /** Whether nothing but resistors, capacitors and inputs is joined: their sum must be nothing. */
  boolean closed() {
    return devices.isEmpty();
  }

  /** The sum as it would be without one of the resistors. */
  double without(Branch branch) {
    return amps - branch.amps();
  }

  /** What the sum without that one may be off by. */
  double toleranceWithout(Branch branch) {
    return tolerance - branch.slack();
  }

  /** The sums with the voltages as read; empty where the net itself wasn't. */
  static Optional<NodeCurrents> asRead(UnitReadings unit, NetId net) {
    return at(unit, net, unit::volts);
  }

  /** The sums that a healthy unit has. */
  static Optional<NodeCurrents> healthy(UnitReadings unit, NetId net) {
    return at(unit, net, other -> unit.isRail(other) ? unit.volts(other) : unit.healthy(other));
  }

  private static Optional<NodeCurrents> at(
      UnitReadings unit, NetId net, Function<NetId, Optional<NetVoltage>> volts) {
    Optional<NetVoltage> here = volts.apply(net);
    if (here.isEmpty() || unit.isRail(net)) {
      return Optional.empty();
    }
    return Optional.of(new Accumulator(unit, net, here.get(), volts).sum());
  }

  private static final class Accumulator {
    private final UnitReadings unit;
    private final NetId net;
    private final NetVoltage here;
    private final Function<NetId, Optional<NetVoltage>> volts;
    private final List<Branch> branches = new ArrayList<>();
    private final List<PinRef> capacitors = new ArrayList<>();
    private final List<PinRef> inputs = new ArrayList<>();
    private final List<PinRef> devices = new ArrayList<>();
    private boolean complete = true;

    Accumulator(
        UnitReadings unit,
        NetId net,
        NetVoltage here,
        Function<NetId, Optional<NetVoltage>> volts) {
      this.unit = unit;
      this.net = net;
      this.here = here;
      this.volts = volts;
    }

    NodeCurrents sum() {
      unit.pins(net).forEach(this::add);
      double amps = branches.stream().mapToDouble(Branch::amps).sum();
      double slack = branches.stream().mapToDouble(Branch::slack).sum();
      return new NodeCurrents(
          net, here.value(), amps, slack, branches, capacitors, inputs, devices, complete);
    }

    private void add(PinRef pin) {
      if (unit.isFamily(pin.part(), "capacitor")) {
        capacitors.add(pin);
      } else if (unit.isFamily(pin.part(), "connector")) {
        return; // nothing is plugged in while direct voltages are read
      } else if (unit.ohms(pin.part()).isPresent()) {
        resistor(pin);
      } else if (isInput(unit, pin)) {
        inputs.add(pin);
      } else {
        devices.add(pin);
      }
    }

    private void resistor(PinRef pin) {
      OptionalDouble ohms = unit.ohms(pin.part());
      Optional<NetId> other = unit.otherEnd(pin);
      Optional<NetVoltage> far = other.flatMap(volts);
      if (far.isEmpty() || ohms.isEmpty()) {
        complete = false;
        return;
      }
      double amps = (far.get().value() - here.value()) / ohms.getAsDouble();
      double slack =
          Math.abs(amps) * tolerance(pin.part())
              + (far.get().uncertainty() + here.uncertainty()) / ohms.getAsDouble();
      branches.add(
          new Branch(pin.part(), other.get(), far.get().value(), ohms.getAsDouble(), amps, slack));
    }

    private double tolerance(PartId part) {
      return unit.marking(part, Quantity.RESISTANCE)
          .flatMap(ValueReading::tolerance)
          .filter(tolerance -> tolerance.basis() == Tolerance.Basis.FRACTION)
          .map(tolerance -> Math.max(tolerance.high(), -tolerance.low()))
          .orElse(USUAL_TOLERANCE);
    }
  }

  /** Whether a pin takes next to no current: a gate, or the input of an amplifier. */
  static boolean isInput(UnitReadings unit, PinRef pin) {
    for (Terminal terminal : unit.terminals(pin)) {
      boolean input =
          switch (terminal.role()) {
            case "gate", "grid", "-in", "+in" -> true;
            default -> false;
          };
      if (!input) {
        return false;
      }
    }
    return !unit.terminals(pin).isEmpty();
  }
}
