package org.relegend.bench.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.relegend.bench.Instrument;
import org.relegend.circuit.Terminal;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;

/**
 * What a probe does to a node: the resistance that the node is held by (Thévenin), through
 * resistors to nets that are held firmly. Collectors, gates and capacitors count as no way for
 * direct current; emitters and diodes hold in a way that isn't computed, so that the figure is an
 * upper limit there.
 *
 * @param ohms the resistance the node is held by; empty where no resistor holds it
 * @param openVolts its voltage untouched, from the resistors alone; empty where unknown
 * @param resistors that hold it directly
 * @param controls gates, bases and inputs on it: what they control moves with it
 * @param firm the one net that holds it with the same voltage, where there is one: the reference to
 *     read it against
 * @param exact whether nothing but resistors holds it
 */
public record ProbeLoad(
    NetId net,
    NodeClass nodeClass,
    OptionalDouble ohms,
    OptionalDouble openVolts,
    List<PartId> resistors,
    List<PinRef> controls,
    Optional<NetId> firm,
    boolean exact) {
  /** From here on a resistance counts as high. */
  private static final double HIGH_OHMS = 1e6;

  /** Behind less than this a node isn't of high impedance, though nobody knows what holds it. */
  private static final double LOW_OHMS = 1e4;

  /** A meter of ten times the node's resistance reads within a tenth (reference 7b: SS0602). */
  public static final double METER_FACTOR = 10;

  /** Larger networks of resistors than this aren't solved. */
  private static final int MOST_NODES = 60;

  public ProbeLoad {
    resistors = List.copyOf(resistors);
    controls = List.copyOf(controls);
  }

  /**
   * What a meter reads at a source of this voltage and resistance.
   *
   * @param volts across the open source
   * @param sourceOhms above or at 0
   * @param meterOhms above 0
   */
  public static double read(double volts, double sourceOhms, double meterOhms) {
    return volts * meterOhms / (meterOhms + sourceOhms);
  }

  /** What was there before the meter touched, from what it reads. */
  public static double corrected(double read, double sourceOhms, double meterOhms) {
    return read * (meterOhms + sourceOhms) / meterOhms;
  }

  /**
   * The frequency in hertz above which a probe's capacitance takes more than 3 dB: source and probe
   * resistance side by side, with the capacitance across them.
   */
  public static double bandwidth(double sourceOhms, double probeOhms, double probeFarads) {
    double side = sourceOhms * probeOhms / (sourceOhms + probeOhms);
    return 1 / (2 * Math.PI * side * probeFarads);
  }

  /** Whether this instrument changes the node by more than a tenth, or by nobody knows how much. */
  public boolean fragileFor(Instrument instrument) {
    return switch (nodeClass) {
      case DRIVEN -> false;
      case HIGH_IMPEDANCE -> true;
      case RESISTIVE -> !instrument.known() || ohms.orElse(0) * METER_FACTOR > instrument.ohms();
    };
  }

  /** What the instrument would read there against the reference; empty where not computed. */
  public OptionalDouble reads(Instrument instrument) {
    return ohms.isPresent() && openVolts.isPresent() && instrument.known()
        ? OptionalDouble.of(read(openVolts.getAsDouble(), ohms.getAsDouble(), instrument.ohms()))
        : OptionalDouble.empty();
  }

  /** The loading of a node of this unit, from the map's voltages and resistors. */
  public static ProbeLoad of(UnitReadings unit, NetId net) {
    Network network = new Network(unit, net);
    List<PinRef> controls = unit.pins(net).stream().filter(pin -> isControl(unit, pin)).toList();
    if (network.holds(net)) {
      return new ProbeLoad(
          net,
          NodeClass.DRIVEN,
          OptionalDouble.of(0),
          unit.isRail(net) ? unit.nominal(net) : OptionalDouble.empty(),
          List.of(),
          controls,
          Optional.empty(),
          true);
    }
    OptionalDouble ohms = network.ohms();
    boolean exact = unit.pins(net).stream().noneMatch(pin -> holdsSomehow(unit, pin));
    boolean high = exact && (ohms.isEmpty() ? !isBehindLow(unit, net) : isHigh(ohms));
    return new ProbeLoad(
        net,
        high ? NodeClass.HIGH_IMPEDANCE : NodeClass.RESISTIVE,
        ohms,
        network.volts(),
        unit.pins(net).stream()
            .map(PinRef::part)
            .filter(part -> unit.ohms(part).isPresent())
            .distinct()
            .toList(),
        controls,
        network.onlyFirm(),
        exact);
  }

  private static boolean isHigh(OptionalDouble ohms) {
    return ohms.orElse(0) >= HIGH_OHMS;
  }

  private static boolean isBehindLow(UnitReadings unit, NetId net) {
    return unit.pins(net).stream()
        .map(pin -> unit.ohms(pin.part()))
        .anyMatch(ohms -> ohms.isPresent() && ohms.getAsDouble() < LOW_OHMS);
  }

  private static boolean isControl(UnitReadings unit, PinRef pin) {
    return NodeCurrents.isInput(unit, pin)
        || unit.terminals(pin).stream().anyMatch(terminal -> terminal.role().equals("base"));
  }

  /** Emitters, diodes and what isn't known hold a node in a way that isn't computed. */
  private static boolean holdsSomehow(UnitReadings unit, PinRef pin) {
    if (unit.isFamily(pin.part(), "capacitor")
        || unit.isFamily(pin.part(), "connector")
        || unit.ohms(pin.part()).isPresent()
        || NodeCurrents.isInput(unit, pin)) {
      return false;
    }
    return unit.terminals(pin).stream()
        .map(Terminal::role)
        .noneMatch(role -> role.equals("collector") || role.equals("drain"));
  }

  /** The warning before a probe touches it; empty where there is nothing to warn of. */
  public Optional<String> warning(UnitReadings unit, Instrument instrument) {
    if (!fragileFor(instrument)) {
      return Optional.empty();
    }
    StringBuilder text = new StringBuilder(unit.name(net));
    text.append(" is ").append(nodeClass.word());
    if (!resistors.isEmpty()) {
      List<String> held = new ArrayList<>();
      for (PartId part : resistors) {
        held.add(
            "%s (%s)".formatted(unit.name(part), NetVoltage.ohms(unit.ohms(part).orElseThrow())));
      }
      text.append(", held by ").append(String.join(" and ", held));
    }
    text.append(": touching this node may change what you see");
    OptionalDouble reads = reads(instrument);
    if (reads.isPresent()) {
      String loaded = NetVoltage.text(reads.getAsDouble());
      String open = NetVoltage.text(openVolts.getAsDouble());
      if (!loaded.equals(open)) {
        text.append(
            ". With %s it reads %s and not %s"
                .formatted(NetVoltage.ohms(instrument.ohms()), loaded, open));
      }
    }
    if (!controls.isEmpty()) {
      text.append(
          "; %s hang%s on it, and what they control moves too, as far as muting the channel"
              .formatted(
                  String.join(", ", controls.stream().map(unit::name).toList()),
                  controls.size() == 1 ? "s" : ""));
    }
    text.append(". A change on touch doesn't mean that the fault is here.");
    firm.ifPresent(
        rail ->
            text.append(
                " Read it against %s: nothing should flow then.".formatted(unit.name(rail))));
    return Optional.of(text.toString());
  }

  /** The resistors around a node, as far as nets that are held firmly. */
  private static final class Network {
    private final UnitReadings unit;
    private final NetId start;
    private final Map<NetId, Integer> index = new LinkedHashMap<>();
    private final Set<NetId> firm = new LinkedHashSet<>();
    private final double[][] conductance;
    private final double[] currents;
    private boolean voltsKnown = true;

    Network(UnitReadings unit, NetId start) {
      this.unit = unit;
      this.start = start;
      collect();
      int n = index.size();
      conductance = new double[n][n];
      currents = new double[n];
      index.forEach(this::stamp);
    }

    boolean holds(NetId net) {
      return unit.isRail(net)
          || unit.isReference(net)
          || unit.pins(net).stream().anyMatch(this::isOutput);
    }

    private boolean isOutput(PinRef pin) {
      return (unit.isFamily(pin.part(), "opamp") || unit.isFamily(pin.part(), "regulator"))
          && unit.terminals(pin).stream().anyMatch(terminal -> terminal.role().equals("out"));
    }

    private void collect() {
      List<NetId> open = new ArrayList<>(List.of(start));
      index.put(start, 0);
      for (int i = 0; i < open.size() && index.size() < MOST_NODES; i++) {
        for (PinRef pin : unit.pins(open.get(i))) {
          Optional<NetId> far = far(pin);
          if (far.isPresent() && !holds(far.get()) && !index.containsKey(far.get())) {
            index.put(far.get(), index.size());
            open.add(far.get());
          }
        }
      }
    }

    private Optional<NetId> far(PinRef pin) {
      return unit.ohms(pin.part()).isPresent() ? unit.otherEnd(pin) : Optional.empty();
    }

    private void stamp(NetId net, int row) {
      for (PinRef pin : unit.pins(net)) {
        Optional<NetId> far = far(pin);
        if (far.isEmpty()) {
          continue;
        }
        double siemens = 1 / unit.ohms(pin.part()).orElseThrow();
        Integer column = index.get(far.get());
        if (column != null) {
          conductance[row][row] += siemens;
          conductance[row][column] -= siemens;
        } else if (holds(far.get())) {
          conductance[row][row] += siemens;
          firm.add(far.get());
          OptionalDouble volts =
              unit.isRail(far.get()) ? unit.nominal(far.get()) : OptionalDouble.empty();
          voltsKnown &= volts.isPresent();
          currents[row] += siemens * volts.orElse(0);
        }
      }
    }

    OptionalDouble ohms() {
      double[] one = new double[index.size()];
      one[0] = 1;
      return solved(one);
    }

    OptionalDouble volts() {
      return voltsKnown ? solved(currents.clone()) : OptionalDouble.empty();
    }

    Optional<NetId> onlyFirm() {
      return firm.size() == 1 && !unit.isReference(firm.iterator().next())
          ? Optional.of(firm.iterator().next())
          : Optional.empty();
    }

    /** The first unknown of the system, by elimination; empty where nothing holds the node. */
    private OptionalDouble solved(double[] right) {
      int n = right.length;
      double[][] a = new double[n][];
      for (int i = 0; i < n; i++) {
        a[i] = conductance[i].clone();
      }
      for (int k = n - 1; k > 0; k--) { // backwards, so that the node asked for comes last
        if (a[k][k] <= 0) {
          continue; // nothing joined there
        }
        for (int i = 0; i < k; i++) {
          double factor = a[i][k] / a[k][k];
          for (int j = 0; j < k; j++) {
            a[i][j] -= factor * a[k][j];
          }
          right[i] -= factor * right[k];
        }
      }
      boolean held = a[0][0] > 1e-9 * Math.max(1e-9, conductance[0][0]);
      return held && a[0][0] > 0 ? OptionalDouble.of(right[0] / a[0][0]) : OptionalDouble.empty();
    }
  }
}
