package org.relegend.hazard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.relegend.map.BoardMap;
import org.relegend.map.Potential;

/**
 * Random supplies: each is built twice at once, as people draw it and as it is. What is drawn may
 * lack roles and voltages or have wrong roles; what is built is the truth, and knows nothing of
 * kinds, roles or the code under test.
 */
final class Supplies {
  /** How much the map tells of windings. */
  enum Telling {
    FULL,
    PART,
    UNREADABLE,
    NUMBERS,
    WRONG
  }

  private static final String EARTH = "PE";
  private static final String ZERO = "0V";

  final Random random;
  final SupplySketch sketch = new SupplySketch();
  final PhysicalCircuit built = new PhysicalCircuit();
  final Map<String, List<String>> pins = new LinkedHashMap<>();
  private final Telling telling;
  private final double voltsTold;
  final Set<String> high = new TreeSet<>();
  private final Set<String> sources = new TreeSet<>();
  private int count;
  private boolean complete;

  private Supplies(long seed) {
    random = new Random(seed);
    complete = true;
    telling = Telling.values()[random.nextInt(Telling.values().length)];
    voltsTold = random.nextInt(3) == 0 ? 1 : random.nextInt(3) / 2.0;
  }

  /**
   * A map and its truth.
   *
   * @param complete whether the map tells all there is: windings, voltages, also of valves'
   *     electrodes, reference, packages
   * @param live nets that mains reaches
   * @param high nets above the limits for alternating voltage, or for what is between rails
   * @param peaks the greatest voltage of each net that was solved, against 0 V
   */
  record Supply(
      BoardMap map,
      Telling telling,
      boolean complete,
      Set<String> live,
      Set<String> high,
      Map<String, Double> peaks) {}

  static Supply of(long seed) {
    return new Supplies(seed).make();
  }

  private Supply make() {
    if (random.nextInt(8) == 0) {
      batteries();
    } else {
      String[] lines = inlet();
      switch (random.nextInt(9)) {
        case 0 -> liveChassis(lines);
        case 1 -> autotransformer(lines);
        case 8 -> module(lines);
        case 2, 3 -> switcher(lines);
        default -> transformer(lines);
      }
    }
    Set<String> live = sources.isEmpty() ? Set.of() : built.reach(sources, EARTH);
    Map<String, Double> peaks = built.peaks(ZERO);
    peaks.keySet().removeAll(live);
    if (live.contains(ZERO)) {
      peaks.clear();
    }
    return new Supply(
        sketch.map(),
        telling,
        complete && voltsTold == 1 && telling == Telling.FULL,
        live,
        high,
        peaks);
  }

  String name(String letters) {
    count++;
    return letters + count;
  }

  boolean chance(double share) {
    return random.nextDouble() < share;
  }

  /** A part between nets: pins with roles as drawn. */
  void draw(String letters, String kind, String value, String... drawn) {
    sketch.part(name(letters), kind, value, drawn);
  }

  /** Live and neutral behind filter, fuse and switch. */
  private String[] inlet() {
    sources.addAll(List.of("L0", "N0"));
    if (chance(0.7)) {
      draw("J", "mains-terminal", "", "L:L0", "N:N0", "E:" + EARTH);
    } else if (chance(0.5)) {
      draw("J", "mains-terminal", "", "1:L0", "2:N0");
    } else {
      draw("J", "connector", "", "1:L0", "2:N0");
      sketch.text("L0", Potential.Nature.MAINS, 230).text("N0", Potential.Nature.MAINS, 230);
    }
    String live = "L0";
    String neutral = "N0";
    if (chance(0.4)) {
      draw(
          "FL",
          chance(0.5) ? "filter" : "line-filter",
          "",
          "L:" + live,
          "N:" + neutral,
          "E:" + EARTH,
          "LL:L1",
          "NN:N1");
      sketch.text(EARTH, Potential.Nature.EARTH, 0);
      built.join(live, "L1");
      built.join(neutral, "N1");
      live = "L1";
      neutral = "N1";
    }
    if (chance(0.8)) {
      draw("F", "fuse", "T1A", "1:" + live, "2:L2");
      built.join(live, "L2");
      live = "L2";
    }
    if (chance(0.4)) {
      draw("SW", "switch-spst", "", "1:" + live, "2:L3");
      built.join(live, "L3");
      live = "L3";
    } else if (chance(0.4)) {
      boolean crossed = chance(0.5); // 1 with 3, 2 with 4: makers differ
      boolean words = chance(0.5) && !crossed;
      draw(
          "SW",
          "switch-dpst",
          "",
          (words ? "1=1 in:" : "1=:") + live,
          (words ? "2=1 out:" : "2=:") + (crossed ? neutral : "L3"),
          (words ? "3=2 in:" : "3=:") + (crossed ? "L3" : neutral),
          (words ? "4=2 out:" : "4=:") + "N3");
      built.join(live, "L3");
      built.join(neutral, "N3");
      live = "L3";
      neutral = "N3";
    }
    if (chance(0.4)) {
      draw("C", "cap-mains", "100n 275 V AC", "1:" + live, "2:" + neutral);
    }
    return new String[] {live, neutral};
  }

  /** One end of a winding as it is told. */
  private String role(boolean primary, int number) {
    String right = primary ? "primary" : "secondary " + number;
    return switch (telling) {
      case FULL -> right;
      case PART -> chance(0.6) ? right : "";
      case UNREADABLE ->
          List.of("230V", "9V", "red", "start", "end", "S", "0", "").get(random.nextInt(8));
      case NUMBERS -> "";
      case WRONG -> chance(0.7) ? right : primary ? "secondary" : "primary";
    };
  }

  private void transformer(String[] lines) {
    List<String> drawn = new ArrayList<>();
    int pin = 1;
    drawn.add(pin++ + "=" + role(true, 0) + ":" + lines[0]);
    drawn.add(pin++ + "=" + role(true, 0) + ":" + lines[1]);
    built.join(lines[0], lines[1]);
    if (chance(0.3)) { // a tap that a lamp or a fan is on
      drawn.add(pin++ + "=" + role(true, 0) + ":TAP");
      built.join(lines[1], "TAP");
      draw("LP", "lamp", "", "1:TAP", "2:" + lines[0]);
    }
    int windings = 1 + random.nextInt(3);
    List<Runnable> loads = new ArrayList<>();
    for (int w = 1; w <= windings; w++) {
      String a = "A" + w;
      String b = w == 1 && chance(0.3) ? ZERO : "B" + w;
      double rms =
          List.of(6.3, 9.0, 15.0, 18.0, 25.0, 35.0, 50.0, 120.0, 250.0, 350.0)
              .get(random.nextInt(10));
      boolean tapped = !b.equals(ZERO) && chance(0.4);
      drawn.add(pin++ + "=" + role(false, w) + ":" + a);
      if (tapped) {
        drawn.add(
            pin++
                + "="
                + (telling == Telling.FULL ? role(false, w) + " tap" : role(false, w))
                + ":"
                + ZERO);
      }
      drawn.add(pin++ + "=" + role(false, w) + ":" + b);
      new Rectifiers(this, w).load(loads, a, b, rms, tapped);
    }
    draw("T", "transformer", "", drawn.toArray(String[]::new));
    loads.forEach(Runnable::run);
    tellZero();
    if (chance(0.3)) {
      boolean large = chance(0.4);
      String far = chance(0.5) ? ZERO : "A1";
      draw("C", chance(0.5) ? "cap-y" : "cap", large ? "47n" : "2n2", "1:" + far, "2:" + lines[0]);
      if (large) {
        built.join(lines[0], far);
      }
    }
  }

  void tellZero() {
    boolean stated = chance(0.9);
    complete &= stated;
    if (stated) {
      sketch.text(ZERO, Potential.Nature.REFERENCE, 0);
    }
  }

  /** The map doesn't tell all there is: a valve's electrodes have no volts typed in. */
  void leaveElectrodesUntold() {
    complete = false;
  }

  /** Whether this voltage is typed in, rounded up. */
  void tell(String net, Potential.Nature nature, double volts) {
    if (chance(voltsTold) && !net.equals(ZERO)) {
      sketch.text(net, nature, volts);
    }
  }

  private void liveChassis(String[] lines) {
    draw("R", "resistor", "150R 20W", "1:" + lines[0], "2:D0");
    draw(
        "D",
        chance(0.5) ? "diode" : "valve-diode",
        "",
        chance(0.5) ? "A:D0" : "A=anode:D0",
        "K:HT");
    draw("C", "cap-pol", "50u 350V", "+:HT", "-:" + lines[1]);
    draw("V", "pentode", "", "A:AN", "G1:GR", "G2:HT", "K:" + lines[1], "H1:H1", "H2:" + lines[1]);
    draw("R", "resistor", "1k", "1:" + lines[0], "2:H1");
    draw("R", "resistor", "1M", "1:GR", "2:" + lines[1]);
    boolean stated = chance(0.6);
    complete = false; // nobody types what a loudspeaker gets
    draw(
        "T",
        "transformer-signal",
        "",
        (stated ? "1=primary" : "1=") + ":HT",
        (stated ? "2=primary" : "2=") + ":AN",
        (stated ? "3=secondary" : "3=") + ":S1",
        (stated ? "4=secondary" : "4=") + ":S2");
    draw("LS", "speaker", "3R", "1:S1", "2:S2");
    for (String net : List.of("D0", "HT", "AN", "GR", "H1")) {
      built.join(lines[0], net);
    }
    if (chance(0.5)) {
      sketch.text(lines[1], Potential.Nature.REFERENCE, 0);
    }
  }

  private void autotransformer(String[] lines) {
    draw("T", "autotransformer", "", "1:" + lines[0], "2:OUT", "3:" + lines[1]);
    draw("BR", "bridge", "", "AC1:OUT", "AC2:" + lines[1], "PLUS:P", "MINUS:M");
    built.join(lines[0], "OUT");
    built.join("OUT", "P");
    built.join("OUT", "M");
  }

  /**
   * A bought module that isolates or doesn't, told in full, with words that prove nothing, or not.
   */
  private void module(String[] lines) {
    boolean isolates = chance(0.6);
    boolean told = isolates && chance(0.6);
    String in = chance(0.5) ? "input" : "primary";
    String out = told || chance(0.5) ? (in.equals("input") ? "output" : "secondary") : "";
    complete &= told;
    draw(
        "PS",
        told || !out.isEmpty() && isolates ? "power-supply-isolated" : "power-supply",
        "24V",
        "1=" + in + ":" + lines[0],
        "2=" + in + ":" + lines[1],
        "3=" + out + ":OUT",
        "4=" + (told ? out : chance(0.5) ? out : "") + ":" + ZERO);
    built.battery("OUT", ZERO, 24);
    if (!isolates) {
      built.join(lines[1], ZERO);
    }
    draw("R", "resistor", "1k", "1:OUT", "2:LOAD");
    built.resistor("OUT", "LOAD", 1e3);
    tell("OUT", Potential.Nature.DC, 24);
    tellZero();
  }

  private void switcher(String[] lines) {
    draw("BR", "bridge", "", "AC1:" + lines[0], "AC2:" + lines[1], "PLUS:HV", "MINUS:HG");
    draw("C", "cap-pol", "100u 400V", "+:HV", "-:HG");
    draw("Q", "nmos", "", "D:DR", "G:GT", "S:HG");
    for (String net : List.of("HV", "HG", "DR", "GT")) {
      built.join(lines[0], net);
    }
    draw(
        "T",
        "transformer",
        "",
        "1=" + role(true, 0) + ":HV",
        "2=" + role(true, 0) + ":DR",
        "3=" + role(false, 1) + ":S1",
        "4=" + role(false, 1) + ":" + ZERO);
    double volts = List.of(5.0, 12.0, 24.0, 140.0).get(random.nextInt(4));
    draw("D", "diode", "", "A:S1", "K:OUT");
    draw("C", "cap-pol", "1000u", "+:OUT", "-:" + ZERO);
    built.winding("S1", ZERO, volts);
    built.diode("S1", "OUT");
    built.capacitor("OUT", ZERO);
    tell("S1", Potential.Nature.AC, volts / Math.sqrt(2));
    tell("OUT", Potential.Nature.DC, volts);
    tellZero();
    int numbering = random.nextInt(3);
    String name = name("U");
    sketch.part(
        name,
        "optocoupler",
        "",
        (numbering == 0 ? "1=led anode" : "1=") + ":OUT",
        (numbering == 0 ? "2=led cathode" : "2=") + ":FB",
        (numbering == 0 ? "3=output emitter" : "3=") + ":HG",
        (numbering == 0 ? "4=output collector" : "4=") + ":GT");
    complete &= numbering < 2;
    if (numbering == 1) {
      sketch.casing("DIP-4");
    }
    built.resistor("OUT", "FB", 1e3);
    built.join("HG", "GT");
    boolean large = chance(0.3);
    if (chance(0.5)) {
      draw("C", "cap-y", large ? "22n" : "1n", "1:" + ZERO, "2:HG");
      if (large) {
        built.join("HG", ZERO);
      }
    }
  }

  private void batteries() {
    int cells = 1 + random.nextInt(8);
    double each = List.of(1.5, 6.0, 9.0, 12.0).get(random.nextInt(4));
    for (int c = 1; c <= cells; c++) {
      String low = c == 1 ? ZERO : "P" + (c - 1);
      draw("BT", "battery", (each + "V").replace(".0V", "V"), "+:P" + c, "-:" + low);
      built.battery("P" + c, low, each);
    }
    draw("R", "resistor", "1k", "1:P" + cells, "2:LOAD");
    built.resistor("P" + cells, "LOAD", 1e3);
    tellZero();
  }
}
