package org.relegend.bench.rule;

import java.util.List;
import java.util.Optional;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Node;
import org.relegend.map.NetId;
import org.relegend.map.Part;

/** What the amplifier rules have in common. */
final class Amplifiers {
  /** An output this close to its supply is at the rail (practice reference F: 1.5 to 2 V). */
  static final double SATURATED = 2.0;

  /** Inputs of a closed loop are equal within some millivolts; offset and meter allowed for. */
  static final double EQUAL = 0.02;

  private Amplifiers() {}

  /** One amplifier with all its voltages known. */
  record Amp(CircuitElement element, NetVoltage plus, NetVoltage minus, NetVoltage out) {
    double between() {
      return plus.value() - minus.value();
    }

    /** What two readings of one meter at the same voltage may differ by: its last digits. */
    double slack() {
      return EQUAL + 0.001 * Math.abs(plus.value());
    }

    boolean unequal() {
      return Math.abs(between()) > slack();
    }

    /** +1 at its upper supply, -1 at its lower, 0 between the two or where they aren't known. */
    int rail() {
      Optional<NetVoltage> high = element.volts("V+");
      Optional<NetVoltage> low = element.volts("V-");
      if (high.isPresent() && out.value() > high.get().value() - SATURATED) {
        return 1;
      }
      return low.isPresent() && out.value() < low.get().value() + SATURATED ? -1 : 0;
    }
  }

  static List<Amp> all(UnitReadings unit) {
    return unit.map().parts().stream()
        .map(Part::id)
        .filter(part -> unit.isFamily(part, "opamp"))
        .flatMap(part -> unit.elements(part).stream())
        .flatMap(element -> amp(element).stream())
        .toList();
  }

  private static Optional<Amp> amp(CircuitElement element) {
    Optional<NetVoltage> plus = element.volts("+in");
    Optional<NetVoltage> minus = element.volts("-in");
    Optional<NetVoltage> out = element.volts("out");
    boolean known =
        plus.isPresent()
            && minus.isPresent()
            && out.isPresent()
            && (plus.get().read() || minus.get().read())
            && out.get().read();
    return known
        ? Optional.of(new Amp(element, plus.get(), minus.get(), out.get()))
        : Optional.empty();
  }

  /** Whether direct current finds a way from the output to the inverting input. */
  static boolean loopDrawn(UnitReadings unit, CircuitElement element) {
    Optional<NetId> out = element.net("out");
    Optional<NetId> minus = element.net("-in");
    if (out.isEmpty() || minus.isEmpty()) {
      return false;
    }
    Circuit circuit = unit.circuit();
    return out.equals(minus)
        || circuit
            .reach(
                List.of(Node.of(out.get())),
                step ->
                    step.conduction().passesDirect()
                        && !step.in().part().equals(element.part())
                        && !(step.to() instanceof Node.OfNet net && unit.isRail(net.net())))
            .has(Node.of(minus.get()));
  }
}
