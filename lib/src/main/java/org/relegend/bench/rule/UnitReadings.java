package org.relegend.bench.rule;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.relegend.bench.Condition;
import org.relegend.bench.Job;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.NodeLimit;
import org.relegend.bench.Reading;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Terminal;
import org.relegend.map.BoardMap;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Potential;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.ComponentValues;
import org.relegend.marking.MarkingReadings;
import org.relegend.marking.Quantity;
import org.relegend.marking.ValueReading;
import org.relegend.marking.Waveform;

/**
 * One unit as it was read: the job laid over the map. Made in one pass, valid for these two; may be
 * used by several threads at once.
 */
public final class UnitReadings {
  /**
   * Direct voltages on a drawing hold to a tenth, one maker says a fifth (practice reference F).
   */
  public static final double DRAWN_FRACTION = 0.1;

  private final Job job;
  private final Circuit circuit;
  private final NetChannels channels;
  private final SupplyNets supplies;
  private final TwinIndex twins;
  private final Map<NetId, Reading> readings = new LinkedHashMap<>();
  private final Map<NetId, Double> read = new HashMap<>();

  /** What the same part is asked again and again: its value and its pins' roles. */
  private final Map<PartId, OptionalDouble> ohms = new ConcurrentHashMap<>();

  private final Map<PartId, List<Terminal>> terminals = new ConcurrentHashMap<>();

  private volatile @Nullable UnitHazards hazards;

  private UnitReadings(Job job, Circuit circuit) {
    this.job = job;
    this.circuit = circuit;
    this.channels = new NetChannels(circuit.map());
    this.supplies = new SupplyNets(circuit, channels);
    this.twins = TwinIndex.of(circuit, channels);
    List<Reading> inTime = new ArrayList<>(job.currentReadings());
    inTime.sort(Comparator.comparing(Reading::taken).thenComparing(Reading::id));
    inTime.stream().filter(UnitReadings::isDirect).forEach(this::enter);
    readings.keySet().forEach(net -> absolute(net, 0));
  }

  public static UnitReadings of(Job job, Circuit circuit) {
    return new UnitReadings(job, circuit);
  }

  private static boolean isDirect(Reading reading) {
    return reading.quantity() == Quantity.VOLTAGE
        && reading.amount().waveform() != Waveform.AC
        && reading.setting().power() != MeasurementSetup.Power.OFF;
  }

  private void enter(Reading reading) {
    netOf(reading.at()).ifPresent(net -> readings.put(net, reading));
  }

  /** The net a reading at a net or pin is of. */
  public Optional<NetId> netOf(Subject at) {
    if (at instanceof Subject.OfNet net) {
      return circuit.map().net(net.net()).map(Net::id);
    }
    return at instanceof Subject.OfPin pin ? netOf(pin.pin()) : Optional.empty();
  }

  public Optional<NetId> netOf(PinRef pin) {
    List<Net> nets = circuit.index().netsOf(pin);
    return nets.size() == 1 ? Optional.of(nets.get(0).id()) : Optional.empty();
  }

  /** The voltage against the map's reference, whatever the black lead was on. */
  private OptionalDouble absolute(NetId net, int depth) {
    Double known = read.get(net);
    if (known != null) {
      return OptionalDouble.of(known);
    }
    Reading reading = readings.get(net);
    if (reading == null || depth > readings.size()) {
      return rail(net);
    }
    String against = reading.setting().against();
    OptionalDouble base =
        against.isEmpty() || isReference(new NetId(against))
            ? OptionalDouble.of(0)
            : absolute(new NetId(against), depth + 1);
    if (base.isPresent()) {
      read.put(net, reading.value() + base.getAsDouble());
    }
    return base.isPresent()
        ? OptionalDouble.of(reading.value() + base.getAsDouble())
        : OptionalDouble.empty();
  }

  public Job job() {
    return job;
  }

  public Circuit circuit() {
    return circuit;
  }

  /** Where this unit can hurt, by the map and by what was read; found out when first asked for. */
  public UnitHazards hazards() {
    UnitHazards known = hazards;
    if (known == null) {
      known = UnitHazards.of(this);
      hazards = known;
    }
    return known;
  }

  public BoardMap map() {
    return circuit.map();
  }

  public TwinIndex twins() {
    return twins;
  }

  /** The nets that were read, in the order of the first reading at each. */
  public List<NetId> netsRead() {
    return readings.keySet().stream().filter(read::containsKey).toList();
  }

  /** The reading that holds for a net now: the latest since the last repair. */
  public Optional<Reading> reading(NetId net) {
    return Optional.ofNullable(readings.get(net));
  }

  /** The voltage of a net; a supply rail nobody read is taken to be as the map says. */
  public Optional<NetVoltage> volts(NetId net) {
    Double value = read.get(net);
    if (value != null) {
      return Optional.of(new NetVoltage(value, true));
    }
    OptionalDouble rail = rail(net);
    return rail.isPresent()
        ? Optional.of(new NetVoltage(rail.getAsDouble(), false))
        : Optional.empty();
  }

  /**
   * What a healthy unit has there: the twin as read, as long as that fits what the map says, else
   * what the map says.
   */
  public Optional<NetVoltage> healthy(NetId net) {
    OptionalDouble nominal = nominal(net);
    Optional<NetVoltage> twin = twin(net);
    if (nominal.isEmpty()) {
      return twin;
    }
    return twin.filter(volts -> asDrawn(net, volts.value()))
        .or(() -> Optional.of(new NetVoltage(nominal.getAsDouble(), false)));
  }

  /** The twin's reading of a net, where it has one. */
  public Optional<NetVoltage> twin(NetId net) {
    return twins.net(net).flatMap(this::readVolts);
  }

  /** Whether a voltage fits what the map says of a net; not where the map says nothing. */
  private boolean asDrawn(NetId net, double volts) {
    OptionalDouble nominal = nominal(net);
    return nominal.isPresent()
        && Math.abs(volts - nominal.getAsDouble()) <= drawnLimit(net, nominal.getAsDouble());
  }

  private double drawnLimit(NetId net, double nominal) {
    NodeLimit limit = job.limit(Subject.of(net));
    boolean own = job.limits().has(Subject.of(net)) || isRail(net) && !rectified(net);
    return own
        ? limit.at(nominal)
        : new NodeLimit(limit.at(), DRAWN_FRACTION, limit.volts()).at(nominal);
  }

  private Optional<NetVoltage> readVolts(NetId net) {
    return Optional.ofNullable(read.get(net)).map(value -> new NetVoltage(value, true));
  }

  /** What the map says a net has when the instrument works; empty where it doesn't say. */
  public OptionalDouble nominal(NetId net) {
    if (isReference(net)) {
      return OptionalDouble.of(0);
    }
    Potential potential = map().net(net).map(Net::potential).orElse(Potential.UNKNOWN);
    return potential.nature() == Potential.Nature.DC && potential.volts() != 0
        ? OptionalDouble.of(potential.volts())
        : OptionalDouble.empty();
  }

  /** Whether voltages are told against this net: as the map says, else by its name. */
  public boolean isReference(NetId net) {
    return supplies.isReference(net);
  }

  /** Whether a net is a supply rail or the reference, see {@link SupplyNets}. */
  public boolean isRail(NetId net) {
    return supplies.isRail(net);
  }

  /** The channel a net works in; empty where it is shared or nobody knows. */
  public String channel(NetId net) {
    return channels.of(net);
  }

  private OptionalDouble rail(NetId net) {
    return isRail(net) ? nominal(net) : OptionalDouble.empty();
  }

  /** Whether a net's reading is as it should be. */
  public NodeVerdict verdict(NetId net) {
    OptionalDouble difference = difference(net);
    return difference.isEmpty()
        ? NodeVerdict.UNKNOWN
        : Math.abs(difference.getAsDouble()) > limit(net) ? NodeVerdict.BAD : NodeVerdict.GOOD;
  }

  /** How far a net's reading lies from what it should be, in volts. */
  public OptionalDouble difference(NetId net) {
    Optional<NetVoltage> here = readVolts(net);
    Optional<NetVoltage> should = healthy(net);
    return here.isEmpty() || should.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(here.get().value() - should.get().value());
  }

  /** How far it may lie, in volts: from the twin less than from a drawing. */
  public double limit(NetId net) {
    Optional<NetVoltage> should = healthy(net);
    double volts = should.map(NetVoltage::value).orElse(0.0);
    return should.map(NetVoltage::read).orElse(false)
        ? job.limit(Subject.of(net)).at(volts)
        : drawnLimit(net, volts);
  }

  /** Whether a rail comes straight from a rectifier, so that it follows the mains. */
  private boolean rectified(NetId net) {
    return pins(net).stream()
        .flatMap(pin -> kind(pin.part()).stream())
        .anyMatch(kind -> kind.name().equals("bridge") || kind.name().equals("diode"));
  }

  public boolean isBad(NetId net) {
    return verdict(net) == NodeVerdict.BAD;
  }

  public Optional<Kind> kind(PartId part) {
    return circuit.kindOf(part);
  }

  public boolean isFamily(PartId part, String family) {
    return kind(part).map(k -> k.family().equals(family)).orElse(false);
  }

  /** The elements of a part: each section, or the part itself, as roles to nets. */
  public List<CircuitElement> elements(PartId part) {
    Map<String, Map<String, PinRef>> bySection = new LinkedHashMap<>();
    List<Terminal> shared = new ArrayList<>();
    for (Terminal terminal : terminals(part)) {
      if (terminal.section().isEmpty()) {
        shared.add(terminal);
      } else {
        bySection
            .computeIfAbsent(terminal.section(), name -> new LinkedHashMap<>())
            .put(terminal.role(), new PinRef(part, terminal.number()));
      }
    }
    if (bySection.isEmpty()) {
      bySection.put("", new LinkedHashMap<>());
    }
    for (Terminal terminal : shared) {
      PinRef pin = new PinRef(part, terminal.number());
      bySection.values().forEach(roles -> roles.putIfAbsent(terminal.role(), pin));
    }
    List<CircuitElement> elements = new ArrayList<>();
    bySection.forEach((name, roles) -> elements.add(new CircuitElement(this, part, name, roles)));
    return elements;
  }

  /** What a pin is in its part; several where sections are tied inside. */
  public List<Terminal> terminals(PinRef pin) {
    return terminals(pin.part()).stream()
        .filter(terminal -> terminal.number().equals(pin.pin()))
        .toList();
  }

  private List<Terminal> terminals(PartId part) {
    return terminals.computeIfAbsent(part, circuit::terminalsOf);
  }

  /** The value a part is marked with, or that was fitted, in the unit of its quantity. */
  public Optional<ValueReading> marking(PartId part, Quantity quantity) {
    Optional<String> fitted =
        job.condition(part).map(Condition::fitted).filter(text -> !text.isEmpty());
    String text = fitted.or(() -> map().part(part).map(Part::value)).orElse("");
    MarkingReadings<ValueReading> all = ComponentValues.read(text, quantity);
    return all.outcome() == MarkingReadings.Outcome.READ ? all.first() : Optional.empty();
  }

  /** A resistor's ohms; empty for pots, whose wiper stands anywhere, and where unreadable. */
  public OptionalDouble ohms(PartId part) {
    return ohms.computeIfAbsent(part, this::readOhms);
  }

  private OptionalDouble readOhms(PartId part) {
    boolean plain =
        isFamily(part, "resistor") && map().part(part).map(p -> p.pins().size() == 2).orElse(false);
    return plain
        ? marking(part, Quantity.RESISTANCE)
            .map(ValueReading::amount)
            .map(Amount::value)
            .filter(ohms -> ohms > 0)
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty())
        : OptionalDouble.empty();
  }

  /** The other end of a part of two pins. */
  public Optional<NetId> otherEnd(PinRef pin) {
    Optional<Part> part = map().part(pin.part());
    if (part.isEmpty() || part.get().pins().size() != 2) {
      return Optional.empty();
    }
    return part.get().pins().stream()
        .filter(other -> !other.number().equals(pin.pin()))
        .findFirst()
        .flatMap(other -> netOf(new PinRef(pin.part(), other.number())));
  }

  public String name(NetId net) {
    return map().nameOf(Subject.of(net));
  }

  public String name(PartId part) {
    return map().nameOf(part);
  }

  public String name(PinRef pin) {
    return map().nameOf(Subject.of(pin));
  }

  public List<PinRef> pins(NetId net) {
    return map().net(net).map(Net::pins).orElse(List.of());
  }

  /** When the reading that holds was taken; the beginning of time where there is none. */
  Instant taken(NetId net) {
    return reading(net).map(Reading::taken).orElse(Instant.MIN);
  }
}
