package org.relegend.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.relegend.circuit.Conduction;
import org.relegend.circuit.Kind;
import org.relegend.circuit.PassageOptions;
import org.relegend.circuit.PinPath;
import org.relegend.map.Part;
import org.relegend.map.PinRef;
import org.relegend.marking.Quantity;

/** The devices that one part of a map is, by its kind, its value and the usual device of both. */
final class PartDevices {
  /** Links, contacts and wires, in ohms. */
  private static final double WIRE_OHMS = 0.01;

  /** A small fuse or a winding of which nobody knows more. */
  private static final double FUSE_OHMS = 0.1;

  private static final double FILM_LEAK_OHMS = 1e11;

  /** Ohms times farads of an electrolytic capacitor: a tenth of the usual limit 0.01 C V. */
  private static final double ELECTROLYTIC_SECONDS = 1000;

  private final Part part;
  private final Kind kind;
  private final PartTerminals terminals;
  private final OperatingState state;
  private final java.util.function.Function<PinRef, String> nodeOf;
  private final List<Device> devices = new ArrayList<>();
  private String gap = "";

  PartDevices(
      Part part,
      Kind kind,
      PartTerminals terminals,
      OperatingState state,
      java.util.function.Function<PinRef, String> nodeOf) {
    this.part = part;
    this.kind = kind;
    this.terminals = terminals;
    this.state = state;
    this.nodeOf = nodeOf;
    terminals.elements().forEach(this::element);
  }

  List<Device> devices() {
    return List.copyOf(devices);
  }

  /** Why the part, or some element of it, is left out; empty where it isn't. */
  String gap() {
    return gap;
  }

  private String value() {
    return state.fitted().getOrDefault(part.id(), part.value());
  }

  private void element(String section) {
    switch (kind.family()) {
      case "resistor", "thermistor" -> resistor(section);
      case "capacitor" -> capacitor(section);
      case "inductor" -> inductor(section);
      case "transducer" -> transducer(section);
      case "diode" -> diode(section);
      case "rectifier" -> bridge(section);
      case "transistor" -> transistor(section);
      case "opamp" ->
          add(section, HandbookModels.amplifier(value()), "+in", "-in", "out", "V+", "V-");
      case "comparator" ->
          add(section, HandbookModels.comparator(), "+in", "-in", "out", "V+", "V-");
      case "regulator" -> regulator(section);
      case "valve" -> valve(section);
      case "link" -> add(section, new Resistance(WIRE_OHMS), "end", "end");
      case "fuse" -> add(section, new Resistance(FUSE_OHMS), "end", "end");
      case "switch" -> contacts(section);
      case "supply" -> supply(section);
      case "connector" -> connector();
      case "varistor" -> add(section, new Resistance(1e9), "end", "end");
      default -> gap = "there is no model of its kind";
    }
  }

  private void add(String section, DeviceLaw law, String... roles) {
    terminals
        .of(section, roles)
        .ifPresentOrElse(
            nodes -> devices.add(new Device(name(section), part.id().text(), nodes, law)),
            () -> gap = "not all its pins are told: " + String.join(", ", roles));
  }

  private String name(String section) {
    String plain = part.id().text() + (section.isEmpty() ? "" : "/" + section);
    String name = plain;
    for (int count = 2; taken(name); count++) {
      name = plain + "#" + count;
    }
    return name;
  }

  private boolean taken(String name) {
    return devices.stream().anyMatch(device -> device.name().equals(name));
  }

  private OptionalDouble number(Quantity quantity) {
    OptionalDouble read = PartValue.of(value(), quantity);
    if (read.isEmpty()) {
      gap = "its value isn't known";
    }
    return read;
  }

  private void resistor(String section) {
    OptionalDouble read =
        kind.name().equals("zero-ohm") ? OptionalDouble.of(0) : number(Quantity.RESISTANCE);
    if (read.isEmpty()) {
      return;
    }
    double ohms = Math.max(WIRE_OHMS, read.getAsDouble());
    double spread = PartValue.spread(value(), Quantity.RESISTANCE);
    Resistance law = new Resistance(ohms, spread);
    if (kind.name().contains("pot")) {
      pot(section, ohms, spread);
    } else if (terminals.one(section, "common").isPresent()) {
      String common = terminals.one(section, "common").orElseThrow();
      for (String end : terminals.all(section, "end")) {
        devices.add(new Device(name(section), part.id().text(), List.of(common, end), law));
      }
    } else {
      add(section, law, both(section, "end", "mains"));
    }
  }

  private String[] both(String section, String usual, String other) {
    String role = terminals.one(section, usual).isPresent() ? usual : other;
    return new String[] {role, role};
  }

  private void pot(String section, double ohms, double spread) {
    if (terminals.one(section, "in").isPresent()) {
      contacts(section);
      return;
    }
    double wiper = state.wipers().getOrDefault(part.id(), 0.5);
    // pots are made to 20 % (common practice)
    add(section, new Potentiometer(ohms, wiper, 1, Math.max(spread, 0.1)), "end", "wiper", "end");
  }

  private void capacitor(String section) {
    double farads = PartValue.of(value(), Quantity.CAPACITANCE).orElse(0);
    boolean polar = terminals.one(section, "positive").isPresent();
    boolean electrolytic = polar || kind.name().contains("bipolar");
    double leak =
        electrolytic
            ? Math.min(1e10, Math.max(1e4, ELECTROLYTIC_SECONDS / Math.max(farads, 1e-7)))
            : FILM_LEAK_OHMS;
    Capacitance law = new Capacitance(farads, leak);
    if (polar) {
      add(section, law, "positive", "negative");
    } else {
      add(section, law, both(section, "end", "mains"));
    }
  }

  private void inductor(String section) {
    double henries = PartValue.of(value(), Quantity.INDUCTANCE).orElse(0);
    // of the wire: about as chokes of the trade have it, 30 ohms at 10 H, 0.3 ohms at 1 mH
    add(section, new Inductance(henries, 0.05 + 10 * Math.sqrt(henries)), "end", "end");
  }

  private void transducer(String section) {
    OptionalDouble ohms = PartValue.of(value(), Quantity.RESISTANCE);
    if (ohms.isPresent() && ohms.getAsDouble() > 0) {
      // the wire of a loudspeaker has about 0.8 of the nominal impedance (IEC 60268-5, 16.1)
      add(section, new Resistance(0.8 * ohms.getAsDouble(), 0.1), "end", "end");
    } else {
      gap = "its resistance isn't known";
    }
  }

  private void diode(String section) {
    switch (kind.name()) {
      case "zener" ->
          number(Quantity.VOLTAGE)
              .ifPresent(
                  volts -> add(section, HandbookModels.zener(Math.abs(volts)), "anode", "cathode"));
      case "tvs", "diac" -> add(section, new Resistance(1e9), "end", "end");
      case "led" -> add(section, HandbookModels.led(value()), "anode", "cathode");
      default -> add(section, HandbookModels.diode(part.kind(), value()), "anode", "cathode");
    }
  }

  private void bridge(String section) {
    Junction law = HandbookModels.diode("rectifier", "1N4007");
    List<String> ac = terminals.all(section, "ac");
    Optional<String> plus = terminals.one(section, "dc+");
    Optional<String> minus = terminals.one(section, "dc-");
    if (ac.size() != 2 || plus.isEmpty() || minus.isEmpty()) {
      gap = "not all its pins are told";
      return;
    }
    for (String node : ac) {
      String id = part.id().text();
      devices.add(new Device(name(section), id, List.of(node, plus.get()), law));
      devices.add(new Device(name(section), id, List.of(minus.get(), node), law));
    }
  }

  private void transistor(String section) {
    String name = kind.name();
    int polarity = name.startsWith("p") ? -1 : 1;
    if (name.contains("darlington")) {
      darlington(section, polarity);
    } else if (name.contains("npn") || name.contains("pnp")) {
      DeviceLaw law = HandbookModels.bipolar(polarity, part.kind(), value());
      add(section, law, "collector", "base", "emitter");
    } else if (name.contains("jfet")) {
      add(section, HandbookModels.junctionFet(polarity, value()), "drain", "gate", "source");
    } else if (name.contains("mos")) {
      add(section, HandbookModels.insulatedFet(polarity, value()), "drain", "gate", "source");
    } else {
      gap = "there is no model of its kind";
    }
  }

  /** Two transistors and the usual resistor across the second's base and emitter. */
  private void darlington(String section, int polarity) {
    Optional<List<String>> nodes = terminals.of(section, "collector", "base", "emitter");
    if (nodes.isEmpty()) {
      gap = "not all its pins are told: collector, base, emitter";
      return;
    }
    String id = part.id().text();
    String collector = nodes.get().get(0);
    String base = nodes.get().get(1);
    String emitter = nodes.get().get(2);
    String inside = name(section) + " inside";
    DeviceLaw law = HandbookModels.bipolar(polarity, part.kind(), "TIP120");
    devices.add(new Device(name(section), id, List.of(collector, base, inside), law));
    devices.add(new Device(name(section), id, List.of(collector, inside, emitter), law));
    devices.add(new Device(name(section), id, List.of(inside, emitter), new Resistance(8000, 0.3)));
  }

  private void regulator(String section) {
    double written = PartValue.of(value(), Quantity.VOLTAGE).orElse(Double.NaN);
    double typed = HandbookModels.fixedVolts(value());
    double volts = Math.abs(Double.isNaN(typed) ? written : typed);
    switch (kind.name()) {
      case "regulator-adj" -> add(section, HandbookModels.adjustable(), "in", "adjust", "out");
      case "reference" ->
          add(
              section,
              HandbookModels.reference(volts > 0 ? volts : 2.495),
              "reference",
              "anode",
              "cathode");
      default -> {
        if (volts > 0) {
          int polarity = kind.name().equals("regulator-neg") ? -1 : 1;
          add(section, HandbookModels.regulator(polarity, volts), "in", "gnd", "out");
        } else {
          gap = "its voltage isn't known";
        }
      }
    }
  }

  /** Heaters are left out: they stand on a supply of their own. */
  private void valve(String section) {
    switch (kind.name()) {
      case "triode", "dual-triode" ->
          add(section, HandbookModels.valve(false, value()), "anode", "grid", "cathode");
      case "pentode" ->
          add(
              section,
              HandbookModels.valve(true, value()),
              "anode",
              "grid",
              "cathode",
              "screen grid");
      default -> {
        List<String> anodes = terminals.all(section, "anode");
        Optional<String> cathode = terminals.one(section, "cathode");
        for (String anode : anodes) {
          cathode.ifPresent(
              node ->
                  devices.add(
                      new Device(
                          name(section),
                          part.id().text(),
                          List.of(anode, node),
                          new ValveDiode(5e-4))));
        }
      }
    }
  }

  private void contacts(String section) {
    String position = state.positions().getOrDefault(part.id(), kind.restPosition());
    if (position.isEmpty()) {
      gap = "nobody said how it stands";
      return;
    }
    if (!section.equals(terminals.elements().get(0)) || position.equals(PassageOptions.OPEN)) {
      return; // all contacts of a part move together
    }
    for (PinPath path : kind.pathsOf(part)) {
      if (path.conduction() == Conduction.CONTACT && path.position().equals(position)) {
        devices.add(
            new Device(
                name("contact"),
                part.id().text(),
                List.of(
                    nodeOf.apply(new PinRef(part.id(), path.from())),
                    nodeOf.apply(new PinRef(part.id(), path.to()))),
                new Resistance(WIRE_OHMS)));
      }
    }
  }

  private void supply(String section) {
    number(Quantity.VOLTAGE)
        .ifPresent(volts -> add(section, new Supply(volts, 0.5), "positive", "negative"));
  }

  /** A jack without its plug and a test point join nothing; what others lead to isn't known. */
  private void connector() {
    boolean plain = kind.name().startsWith("jack") || kind.name().equals("test-point");
    if (!plain && !kind.name().equals("ic-socket")) {
      gap = "what is plugged into it isn't known";
    } else if (kind.name().equals("jack-switched")) {
      contacts(terminals.elements().get(0));
    }
  }
}
