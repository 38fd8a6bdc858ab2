package org.relegend.bench.rule;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.relegend.bench.PartState;
import org.relegend.bench.Reading;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Node;
import org.relegend.circuit.NodeStep;
import org.relegend.hazard.DischargeText;
import org.relegend.hazard.HazardousNode;
import org.relegend.hazard.Hazards;
import org.relegend.hazard.StoredCharge;
import org.relegend.hazard.VoltageLimits;
import org.relegend.map.BoardMap;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Potential;
import org.relegend.marking.Quantity;
import org.relegend.marking.Waveform;

/**
 * Where one unit can hurt: what the map tells, and besides what was read and found on this unit. A
 * reading above the limits makes its node high for good, whatever the map says and whatever was
 * read later; nothing that was read makes a node lower. A bleeder that is missing, damaged or read
 * too high is none.
 */
public final class UnitHazards {
  /** What stands before every step that touches a part (NEETS module 16; common practice). */
  public static final String BEFORE_TOUCHING = "Unplugged, discharged and measured, ";

  /** A resistor that reads so many times its value isn't counted on. */
  private static final double TOO_HIGH = 1.5;

  /**
   * Capacitors made for so many times the limit aren't put into low-voltage circuits for nothing.
   */
  private static final double FAR_ABOVE = 2;

  private final UnitReadings unit;
  private final VoltageLimits limits;
  private final Map<NetId, Reading> high = new TreeMap<>();
  private final Hazards hazards;
  private final Set<Node> reached = new LinkedHashSet<>();
  private final Set<Node> untold;

  private UnitHazards(UnitReadings unit, VoltageLimits limits) {
    this.unit = unit;
    this.limits = limits;
    unit.job().readings().forEach(this::enter);
    this.hazards = Hazards.of(Circuit.of(asFound()), limits);
    hazards.reached().stream().map(HazardousNode::node).forEach(reached::add);
    this.untold = followed(sources());
    hazards.unknown().forEach(hazard -> untold.add(hazard.node()));
  }

  /** By the usual limits of a bench. */
  static UnitHazards of(UnitReadings unit) {
    return new UnitHazards(unit, VoltageLimits.INSTRUMENTS);
  }

  /** All that the map and the readings tell, as one. */
  public Hazards hazards() {
    return hazards;
  }

  /** Nets at which more than the limits was read, with the highest such reading at each. */
  public Map<NetId, Reading> readHigh() {
    return java.util.Collections.unmodifiableMap(high);
  }

  /** Whether mains or high voltage reach a node, by the map or by what was read. */
  public boolean isReached(Node node) {
    return reached.contains(node);
  }

  /**
   * Whether nobody told what a node carries, and the supply side or a capacitor's rating speaks.
   */
  public boolean isUntold(Node node) {
    return untold.contains(node);
  }

  /** The nets of which that is so. */
  public List<NetId> untoldNets() {
    return unit.map().nets().stream()
        .map(Net::id)
        .filter(net -> untold.contains(Node.of(net)))
        .toList();
  }

  /**
   * How a capacitor is to be discharged before it is touched; empty where it isn't one to count.
   */
  public Optional<String> dischargeFirst(PartId part) {
    return hazards.charges().stream()
        .filter(charge -> charge.capacitors().contains(part) && charge.isNoteworthy(limits))
        .findFirst()
        .map(this::dischargeFirst);
  }

  private String dischargeFirst(StoredCharge charge) {
    DischargeText text = new DischargeText(charge, limits);
    if (charge.discharge().isEmpty()) {
      return "take it as charged: what it holds isn't known (%s); discharge it, and measure across it"
          .formatted(text.means());
    }
    return "may hold %s; discharge it and measure across it (%s)"
        .formatted(text.amount(), text.means());
  }

  private void enter(Reading reading) {
    Optional<NetId> net = unit.netOf(reading.at());
    if (net.isPresent() && reading.quantity() == Quantity.VOLTAGE && isHigh(reading)) {
      high.merge(
          net.get(),
          reading,
          (a, b) -> Math.abs(volts(net.get(), a)) >= Math.abs(volts(net.get(), b)) ? a : b);
    }
  }

  private boolean isHigh(Reading reading) {
    double volts = unit.netOf(reading.at()).map(net -> volts(net, reading)).orElse(0.0);
    return reading.amount().waveform() == Waveform.AC
        ? limits.isHighAc(volts)
        : limits.isHighDc(volts);
  }

  /** As read, or against the map's reference where that is known and more. */
  private double volts(NetId net, Reading reading) {
    boolean holds = unit.reading(net).filter(reading::equals).isPresent();
    double absolute = holds ? unit.volts(net).map(NetVoltage::value).orElse(0.0) : 0;
    return Math.abs(absolute) > Math.abs(reading.value()) ? absolute : reading.value();
  }

  /**
   * The map with the nets as high as they were read, and without bleeders that can't be relied on.
   */
  private BoardMap asFound() {
    BoardMap map = unit.map();
    for (Map.Entry<NetId, Reading> read : high.entrySet()) {
      Net net = map.net(read.getKey()).orElseThrow();
      Potential.Nature nature =
          read.getValue().amount().waveform() == Waveform.AC
              ? Potential.Nature.AC
              : Potential.Nature.DC;
      double volts = volts(net.id(), read.getValue());
      boolean more = Math.abs(net.potential().volts()) < Math.abs(volts);
      if (net.potential().nature() != Potential.Nature.MAINS && more) {
        map =
            map.with(
                MapTables.NETS, map.nets().with(net.withPotential(new Potential(nature, volts))));
      }
    }
    for (Part part : unit.map().parts()) {
      if (unit.isFamily(part.id(), "resistor") && !isRelied(part)) {
        map = map.with(MapTables.PARTS, map.parts().with(part.withValue("")));
      }
    }
    return map;
  }

  private boolean isRelied(Part part) {
    boolean gone =
        unit.job()
            .condition(part.id())
            .filter(known -> known.is(PartState.MISSING) || known.is(PartState.DAMAGED))
            .isPresent();
    boolean tooHigh =
        unit.ohms(part.id()).isPresent()
            && unit.job().readings().stream()
                .filter(reading -> reading.quantity() == Quantity.RESISTANCE)
                .filter(reading -> reading.at().equals(org.relegend.map.Subject.of(part.id())))
                .anyMatch(
                    reading -> reading.value() > TOO_HIGH * unit.ohms(part.id()).getAsDouble());
    return !gone && !tooHigh;
  }

  /** Where the supply side begins that nobody told of: behind barriers, filters, rated parts. */
  private Set<Node> sources() {
    Set<Node> sources = new LinkedHashSet<>();
    for (Part part : unit.map().parts()) {
      boolean fed =
          part.pins().stream()
              .flatMap(pin -> unit.circuit().nodesOf(part.ref(pin)).stream())
              .anyMatch(reached::contains);
      boolean leadsOn =
          unit.isFamily(part.id(), "transformer")
              || unit.isFamily(part.id(), "filter")
              || unit.isFamily(part.id(), "supply")
              || unit.kind(part.id()).isEmpty();
      if (fed && leadsOn || isHighBattery(part)) {
        part.pins().forEach(pin -> sources.addAll(unit.circuit().nodesOf(part.ref(pin))));
      }
    }
    hazards.charges().stream()
        .filter(charge -> charge.basis() == StoredCharge.Basis.RATED)
        .filter(charge -> charge.isNoteworthy(limits) || isFarAbove(charge))
        .forEach(charge -> sources.addAll(charge.ends()));
    sources.removeIf(node -> !isOpen(node));
    return sources;
  }

  private boolean isFarAbove(StoredCharge charge) {
    return charge.volts().orElse(0) > FAR_ABOVE * limits.dcVolts();
  }

  private boolean isHighBattery(Part part) {
    return unit.kind(part.id()).filter(kind -> kind.name().equals("battery")).isPresent()
        && unit.marking(part.id(), Quantity.VOLTAGE)
            .filter(marking -> limits.isHighDc(marking.amount().value()))
            .isPresent();
  }

  /** On from there by all that passes direct current, as far as nobody told a voltage. */
  private Set<Node> followed(Set<Node> sources) {
    Set<Node> found = new LinkedHashSet<>(sources);
    Deque<Node> open = new ArrayDeque<>(found);
    while (!open.isEmpty()) {
      for (NodeStep step : unit.circuit().steps(open.remove())) {
        if (step.conduction().passesDirect() && isOpen(step.to()) && found.add(step.to())) {
          open.add(step.to());
        }
      }
    }
    return found;
  }

  /** Whether nobody told what a node carries; reference and earth are told. */
  private boolean isOpen(Node node) {
    if (reached.contains(node)) {
      return false;
    }
    if (!(node instanceof Node.OfNet net)) {
      return true;
    }
    Potential potential = unit.map().net(net.net()).map(Net::potential).orElse(Potential.UNKNOWN);
    return switch (potential.nature()) {
      case UNKNOWN -> unit.reading(net.net()).isEmpty();
      case AC, DC, MAINS -> potential.volts() == 0;
      case EARTH, REFERENCE -> false;
    };
  }
}
