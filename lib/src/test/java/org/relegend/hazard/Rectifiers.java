package org.relegend.hazard;

import java.util.List;
import org.relegend.map.Potential;

/** What hangs on one winding of a random supply, drawn and built. */
final class Rectifiers {
  private static final String ZERO = "0V";

  private final Supplies supply;
  private final int number;

  Rectifiers(Supplies supply, int number) {
    this.supply = supply;
    this.number = number;
  }

  /** The winding itself, told by its volts or not; what it feeds is drawn after it. */
  void load(List<Runnable> loads, String a, String b, double rms, boolean tapped) {
    double peak = rms * Math.sqrt(2);
    if (tapped) {
      supply.built.winding(a, ZERO, peak);
      supply.built.winding(ZERO, b, peak);
    } else {
      supply.built.winding(a, b, peak);
    }
    if (rms > 30) {
      supply.high.addAll(List.of(a, b));
      supply.high.remove(ZERO);
    }
    supply.tell(a, Potential.Nature.AC, rms);
    supply.tell(b, Potential.Nature.AC, rms);
    loads.add(() -> choose(a, b, rms, tapped));
  }

  private void choose(String a, String b, double rms, boolean tapped) {
    if (tapped) {
      switch (supply.random.nextInt(3)) {
        case 0 -> fullWave(a, b, rms);
        case 1 -> dual(a, b, rms);
        default -> halfWave(a, rms);
      }
    } else if (b.equals(ZERO)) {
      switch (supply.random.nextInt(4)) {
        case 0 -> halfWave(a, rms);
        case 1 -> ladder(a, 1);
        case 2 -> ladder(a, 2 + supply.random.nextInt(2));
        default -> coupled(a);
      }
    } else {
      switch (supply.random.nextInt(4)) {
        case 0 -> bridge(a, b, rms);
        case 1 -> delon(a, b);
        case 2 -> heater(a, b);
        default -> bridge(a, b, rms);
      }
    }
  }

  private String net(String letters) {
    return letters + number;
  }

  private void diode(String anode, String cathode) {
    supply.draw("D", "diode", "", "A:" + anode, "K:" + cathode);
    supply.built.diode(anode, cathode);
  }

  private void capacitor(String plus, String minus, String value) {
    supply.draw("C", "cap-pol", value, "+:" + plus, "-:" + minus);
    supply.built.capacitor(plus, minus);
  }

  private void halfWave(String a, double rms) {
    String out = net("HW");
    diode(a, out);
    capacitor(out, ZERO, rms > 40 ? "32u 500V" : "1000u");
    rail(out, rms * Math.sqrt(2));
  }

  private void fullWave(String a, String b, double rms) {
    String out = net("FW");
    if (supply.chance(0.4)) {
      supply.draw("V", "valve-diode", "", "A1:" + a, "A2:" + b, "K:" + out);
      supply.built.diode(a, out);
      supply.built.diode(b, out);
    } else {
      diode(a, out);
      diode(b, out);
    }
    capacitor(out, ZERO, "100u");
    rail(out, rms * Math.sqrt(2));
  }

  private void dual(String a, String b, double rms) {
    bridgePart(a, b, net("VP"), net("VN"));
    capacitor(net("VP"), ZERO, "4700u");
    capacitor(ZERO, net("VN"), "4700u");
    if (rms * Math.sqrt(8) > 60) {
      supply.high.addAll(List.of(net("VP"), net("VN")));
    }
    rail(net("VP"), rms * Math.sqrt(2));
    supply.tell(net("VN"), Potential.Nature.DC, -rms * Math.sqrt(2));
  }

  private void bridge(String a, String b, double rms) {
    bridgePart(a, b, net("BR"), ZERO);
    capacitor(net("BR"), ZERO, "2200u");
    rail(net("BR"), rms * Math.sqrt(2));
  }

  private void bridgePart(String a, String b, String plus, String minus) {
    if (supply.chance(0.5)) {
      supply.draw("BR", "bridge", "", "AC1:" + a, "AC2:" + b, "PLUS:" + plus, "MINUS:" + minus);
      for (String end : List.of(a, b)) {
        supply.built.diode(end, plus);
        supply.built.diode(minus, end);
      }
    } else {
      for (String end : List.of(a, b)) {
        diode(end, plus);
        diode(minus, end);
      }
    }
  }

  private void delon(String a, String b) {
    String out = net("DL");
    diode(a, out);
    diode(ZERO, a);
    capacitor(out, b, "100u");
    capacitor(b, ZERO, "100u");
    series(out);
  }

  /** Of one stage it is the half-wave doubler. */
  private void ladder(String a, int stages) {
    String pumped = a;
    String smooth = ZERO;
    for (int stage = 1; stage <= stages; stage++) {
      String next = net("X") + "_" + stage;
      String out = net("Y") + "_" + stage;
      supply.draw("C", "cap", "100n", "1:" + pumped, "2:" + next);
      supply.built.capacitor(pumped, next);
      diode(smooth, next);
      diode(next, out);
      supply.draw("C", "cap", "100n", "1:" + smooth, "2:" + out);
      supply.built.capacitor(smooth, out);
      pumped = next;
      smooth = out;
    }
    series(smooth);
  }

  private void coupled(String a) {
    supply.draw("C", "cap", "100n", "1:" + a, "2:" + net("AC"));
    supply.built.capacitor(a, net("AC"));
    series(net("AC"));
  }

  private void heater(String a, String b) {
    supply.leaveElectrodesUntold();
    supply.draw(
        "V",
        "triode",
        "",
        "A:" + net("TA"),
        "G:" + net("TG"),
        "K:" + net("TK"),
        "H1:" + a,
        "H2:" + b);
    supply.draw("R", "resistor", "1k", "1:" + net("TK"), "2:" + ZERO);
    supply.draw("R", "resistor", "1M", "1:" + net("TG"), "2:" + ZERO);
    supply.built.resistor(net("TK"), ZERO, 1e3);
    supply.built.resistor(net("TG"), ZERO, 1e6);
  }

  private void rail(String out, double volts) {
    supply.tell(out, Potential.Nature.DC, volts);
    series(out);
  }

  /** A choke or a resistor, a further reservoir, an anode or a regulator behind it. */
  private void series(String from) {
    String next = from + "s";
    boolean choke = supply.chance(0.3);
    supply.draw(
        choke ? "L" : "R",
        choke ? "inductor" : "resistor",
        choke ? "" : "10k",
        "1:" + from,
        "2:" + next);
    supply.built.resistor(from, next, 1);
    if (supply.chance(0.5)) {
      capacitor(next, ZERO, "47u");
    }
    if (supply.chance(0.3)) {
      String anode = next + "a";
      supply.leaveElectrodesUntold();
      supply.draw("R", "resistor", "100k", "1:" + next, "2:" + anode);
      supply.built.resistor(next, anode, 1);
      supply.draw("V", "triode", "", "A:" + anode, "G:" + anode + "g", "K:" + anode + "k");
      supply.draw("R", "resistor", "1k", "1:" + anode + "k", "2:" + ZERO);
      supply.draw("R", "resistor", "1M", "1:" + anode + "g", "2:" + ZERO);
      supply.built.resistor(anode + "k", ZERO, 1e3);
      supply.built.resistor(anode + "g", ZERO, 1e6);
    }
  }
}
