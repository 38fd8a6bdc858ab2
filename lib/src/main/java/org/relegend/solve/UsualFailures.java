package org.relegend.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How the devices of a circuit usually fail (common practice; the modes are those of MIL-HDBK-338B,
 * table 7.6-1, without the shares). Junctions stay junctions elsewhere; what fails open or shorted
 * does so wholly.
 */
public final class UsualFailures {
  private static final double SHORT_OHMS = 1;
  private static final double LEAK_OHMS = 10e3;
  private static final double OPEN_OHMS = 1e12;

  /** An offset that no circuit round an op-amp makes up for. */
  private static final double STUCK_VOLTS = 100;

  private final Netlist netlist;
  private final List<Fault> faults = new ArrayList<>();

  private UsualFailures(Netlist netlist) {
    this.netlist = netlist;
  }

  /** All of them, part by part; known nodes being as they are. */
  public static List<Fault> of(Netlist netlist) {
    UsualFailures failures = new UsualFailures(netlist);
    netlist.devices().forEach(failures::device);
    failures.joints();
    return List.copyOf(failures.faults);
  }

  /** A solder bridge between two nodes. */
  public static Fault bridge(String a, String b) {
    return new StrayResistance(
        "", FailureMode.BRIDGE, "bridge between %s and %s".formatted(a, b), a, b, 0.1);
  }

  /** A conductor that has lost these terminals, which still hang together. */
  public static Fault broken(String node, List<DeviceTerminal> terminals) {
    String names =
        String.join(", ", terminals.stream().map(DeviceTerminal::device).distinct().toList());
    return new SeveredTerminals(
        "", FailureMode.BROKEN_CONDUCTOR, "%s broken before %s".formatted(node, names), terminals);
  }

  private void device(Device device) {
    DeviceLaw law = device.law();
    if (law instanceof Resistance resistance) {
      resistor(device, resistance);
    } else if (law instanceof Potentiometer) {
      severed(device, 1, "wiper open");
      severed(device, 0, "track open at the first end");
      severed(device, 2, "track open at the last end");
    } else if (law instanceof Capacitance capacitance) {
      capacitor(device, capacitance);
    } else if (law instanceof Inductance coil) {
      changed(device, FailureMode.OPEN, "open", new Inductance(coil.henries(), OPEN_OHMS));
    } else if (law instanceof Junction) {
      junction(device);
    } else if (law instanceof BipolarTransistor transistor) {
      bipolar(device, transistor);
    } else if (law instanceof FieldEffectTransistor transistor) {
      fieldEffect(device, transistor);
    } else if (law instanceof OperationalAmplifier amplifier) {
      amplifier(device, amplifier);
    } else if (law instanceof OpenCollectorComparator comparator) {
      comparator(device, comparator);
    } else if (law instanceof LinearRegulator regulator) {
      regulator(device, regulator);
    } else if (law instanceof Valve valve) {
      valve(device, valve);
    } else if (law instanceof ShuntReference) {
      stray(device, 1, 2, FailureMode.SHORT, "shorted", SHORT_OHMS);
      severed(device, 2, "open");
    } else if (law instanceof ValveDiode) {
      changed(device, FailureMode.LOW, "no emission", new ValveDiode(1e-12));
    }
  }

  private void changed(Device device, FailureMode mode, String text, DeviceLaw law) {
    faults.add(new ChangedLaw(device.part(), mode, text, device.name(), law));
  }

  private void stray(Device device, int a, int b, FailureMode mode, String text, double ohms) {
    String from = device.nodes().get(a);
    String to = device.nodes().get(b);
    boolean silent =
        from.equals(to) || netlist.known().containsKey(from) && netlist.known().containsKey(to);
    if (!silent) {
      faults.add(new StrayResistance(device.part(), mode, text, from, to, ohms));
    }
  }

  private void severed(Device device, int terminal, String text) {
    faults.add(
        new SeveredTerminals(
            device.part(),
            FailureMode.OPEN,
            text,
            List.of(new DeviceTerminal(device.name(), terminal))));
  }

  private void resistor(Device device, Resistance law) {
    changed(device, FailureMode.OPEN, "open", new Resistance(OPEN_OHMS));
    if (law.ohms() <= SHORT_OHMS) {
      return; // a link or a fuse
    }
    changed(device, FailureMode.HIGH, "risen to three times its value", times(law, 3));
    changed(device, FailureMode.LOW, "fallen to a third of its value", times(law, 1 / 3.0));
    changed(device, FailureMode.WRONG_VALUE, "ten times the value fitted", times(law, 10));
    changed(device, FailureMode.WRONG_VALUE, "a tenth of the value fitted", times(law, 0.1));
  }

  private static Resistance times(Resistance law, double factor) {
    return new Resistance(law.ohms() * factor, law.tolerance());
  }

  private void capacitor(Device device, Capacitance law) {
    stray(device, 0, 1, FailureMode.SHORT, "shorted", SHORT_OHMS);
    stray(device, 0, 1, FailureMode.LEAK, "leaks heavily", LEAK_OHMS);
    stray(device, 0, 1, FailureMode.LEAK, "leaks", 200e3);
    changed(device, FailureMode.OPEN, "open", new Capacitance(law.farads() * 1e-4, 1e15));
  }

  private void junction(Device device) {
    stray(device, 0, 1, FailureMode.SHORT, "shorted", SHORT_OHMS);
    stray(device, 0, 1, FailureMode.LEAK, "leaks", LEAK_OHMS);
    severed(device, 0, "open");
  }

  private void bipolar(Device device, BipolarTransistor law) {
    stray(device, 0, 2, FailureMode.SHORT, "collector to emitter shorted", SHORT_OHMS);
    stray(device, 1, 2, FailureMode.SHORT, "base to emitter shorted", SHORT_OHMS);
    stray(device, 0, 1, FailureMode.SHORT, "collector to base shorted", SHORT_OHMS);
    stray(device, 0, 2, FailureMode.LEAK, "collector to emitter leaks", LEAK_OHMS);
    severed(device, 1, "base open");
    severed(device, 0, "collector open");
    severed(device, 2, "emitter open");
    changed(device, FailureMode.LOW, "low gain", law.withGain(law.forwardGain() / 10));
  }

  private void fieldEffect(Device device, FieldEffectTransistor law) {
    stray(device, 0, 2, FailureMode.SHORT, "drain to source shorted", SHORT_OHMS);
    stray(device, 1, 2, FailureMode.SHORT, "gate to source shorted", SHORT_OHMS);
    stray(device, 1, 0, FailureMode.SHORT, "gate to drain shorted", SHORT_OHMS);
    stray(device, 1, 2, FailureMode.LEAK, "gate leaks", 100e3);
    severed(device, 0, "drain open");
    severed(device, 1, "gate open");
    severed(device, 2, "source open");
    changed(device, FailureMode.LOW, "low gain", law.with(law.threshold(), law.beta() / 5));
  }

  private void amplifier(Device device, OperationalAmplifier law) {
    changed(device, FailureMode.STUCK, "output stuck high", law.withOffset(STUCK_VOLTS));
    changed(device, FailureMode.STUCK, "output stuck low", law.withOffset(-STUCK_VOLTS));
    stray(device, 2, 3, FailureMode.SHORT, "output to positive supply shorted", 10);
    stray(device, 2, 4, FailureMode.SHORT, "output to negative supply shorted", 10);
    changed(device, FailureMode.LOW, "offset of 50 mV", law.withOffset(0.05));
    stray(device, 0, 4, FailureMode.LEAK, "non-inverting input leaks", 100e3);
    stray(device, 1, 4, FailureMode.LEAK, "inverting input leaks", 100e3);
    severed(device, 0, "non-inverting input open");
    severed(device, 1, "inverting input open");
    severed(device, 2, "output open");
  }

  private void comparator(Device device, OpenCollectorComparator law) {
    stray(device, 2, 4, FailureMode.STUCK, "output stuck low", 60);
    severed(device, 2, "output open");
    severed(device, 0, "non-inverting input open");
    severed(device, 1, "inverting input open");
    changed(
        device,
        FailureMode.LEAK,
        "input bias risen",
        new OpenCollectorComparator(
            law.gain(), law.bias() * 100, law.onOhms(), law.limit(), law.draw()));
  }

  private void regulator(Device device, LinearRegulator law) {
    stray(device, 0, 2, FailureMode.SHORT, "input to output shorted", SHORT_OHMS);
    stray(device, 2, 1, FailureMode.SHORT, "output shorted", SHORT_OHMS);
    severed(device, 2, "output open");
    severed(device, 1, "common open");
    severed(device, 0, "input open");
    changed(
        device,
        FailureMode.LOW,
        "output low",
        new LinearRegulator(
            law.polarity(),
            law.volts() * 0.7,
            law.dropout(),
            law.outputOhms(),
            law.limit(),
            law.quiescent(),
            law.tolerance()));
  }

  private void valve(Device device, Valve law) {
    changed(device, FailureMode.LOW, "low emission", law.withEmission(0.3));
    changed(device, FailureMode.OPEN, "no emission, heater open", law.withEmission(1e-6));
    stray(device, 1, 2, FailureMode.SHORT, "grid to cathode shorted", SHORT_OHMS);
    stray(device, 0, 1, FailureMode.LEAK, "anode to grid leaks", 10e6);
    severed(device, 0, "anode open");
    severed(device, 1, "grid open");
    severed(device, 2, "cathode open");
  }

  /** Pins of several devices of one part, as an op-amp's supply: open for all of them at once. */
  private void joints() {
    Map<String, Map<String, List<DeviceTerminal>>> shared = new LinkedHashMap<>();
    for (Device device : netlist.devices()) {
      int count = device.law() instanceof OperationalAmplifier ? 3 : 5;
      for (int k = count; k < device.nodes().size(); k++) {
        shared
            .computeIfAbsent(device.part(), part -> new LinkedHashMap<>())
            .computeIfAbsent(device.nodes().get(k), node -> new ArrayList<>())
            .add(new DeviceTerminal(device.name(), k));
      }
    }
    shared.forEach(
        (part, nodes) ->
            nodes.forEach(
                (node, terminals) ->
                    faults.add(
                        new SeveredTerminals(
                            part,
                            FailureMode.JOINT,
                            "supply pin at " + node + " open",
                            terminals))));
  }
}
