package org.relegend.bench.rule;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Terminal;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Potential;

/**
 * The nets that feed others. A supply rail is shared by all channels, and has a voltage of its own,
 * or supply pins, or many parts; a board without channels has all nets shared, so that there the
 * voltage alone tells nothing. The reference is what the map says, else what is called so.
 */
final class SupplyNets {
  /** A shared net of so many pins is a rail, whatever else is known of it. */
  private static final int MANY_PINS = 12;

  private static final Set<String> SUPPLY_ROLES = Set.of("V+", "V-", "dc+", "dc-");

  /** What the reference is called where the map doesn't say which net it is (common practice). */
  private static final Pattern REFERENCE_NAME =
      Pattern.compile("(?i)0 ?V|[AS]?GND|GROUND|COMMON|COM|EARTH 0V");

  private final Circuit circuit;
  private final Set<NetId> references = new HashSet<>();
  private final Set<NetId> rails = new HashSet<>();

  SupplyNets(Circuit circuit, NetChannels channels) {
    this.circuit = circuit;
    boolean declared =
        circuit.map().nets().stream()
            .anyMatch(net -> net.potential().nature() == Potential.Nature.REFERENCE);
    for (Net net : circuit.map().nets()) {
      boolean reference =
          declared
              ? net.potential().nature() == Potential.Nature.REFERENCE
              : REFERENCE_NAME.matcher(net.name()).matches();
      boolean voltage = net.potential().nature() == Potential.Nature.DC;
      boolean shared = channels.of(net.id()).isEmpty();
      if (reference) {
        references.add(net.id());
      }
      if (reference || shared && (channels.any() && voltage || supplies(net))) {
        rails.add(net.id());
      }
    }
  }

  boolean isReference(NetId net) {
    return references.contains(net);
  }

  /** Whether it is a rail, or the reference. */
  boolean isRail(NetId net) {
    return rails.contains(net);
  }

  private boolean supplies(Net net) {
    return net.members().size() >= MANY_PINS || net.pins().stream().anyMatch(this::isSupplyPin);
  }

  private boolean isSupplyPin(PinRef pin) {
    return circuit.terminalsOf(pin.part()).stream()
        .filter(terminal -> terminal.number().equals(pin.pin()))
        .map(Terminal::role)
        .anyMatch(SUPPLY_ROLES::contains);
  }
}
