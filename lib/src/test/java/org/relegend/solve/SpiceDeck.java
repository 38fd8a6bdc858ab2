package org.relegend.solve;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Writes a netlist for ngspice, which has its own equations of most devices. */
final class SpiceDeck {
  private final StringBuilder text = new StringBuilder("* circuit\n");
  private final Map<String, String> nodes = new LinkedHashMap<>();
  private int count;

  SpiceDeck(Netlist netlist) {
    netlist.known().forEach((node, volts) -> line("V%d %s 0 %.10g", ++count, at(node), volts));
    netlist.devices().forEach(this::device);
    nodes.forEach(
        (name, node) -> {
          if (!netlist.known().containsKey(name)) {
            line("R%d %s 0 1e12", ++count, node);
          }
        });
    line(".options reltol=1e-6 abstol=1e-14 vntol=1e-8 gmin=1e-12 itl1=1000 itl2=1000");
  }

  /** For the direct voltages of all nodes. */
  String direct() {
    StringBuilder run = new StringBuilder(".control\nset numdgt=10\nop\n");
    nodes.values().forEach(node -> run.append("print v(").append(node).append(")\n"));
    return text + "" + run + ".endc\n.end\n";
  }

  /** For the level of a node per volt at a known node, and its phase, at one frequency. */
  String alternating(String input, String node, double hertz) {
    String source = text.toString().replaceFirst("(V\\d+ " + at(input) + " 0 \\S+)", "$1 AC 1");
    return source
        + ".control\nset numdgt=10\nac lin 1 %1$g %1$g\nprint vr(%2$s)\nprint vi(%2$s)\n.endc\n.end\n"
            .formatted(hertz, at(node));
  }

  Map<String, String> nodes() {
    return nodes;
  }

  private String at(String node) {
    return nodes.computeIfAbsent(node, name -> "n" + (nodes.size() + 1));
  }

  private void line(String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values)).append('\n');
  }

  private void device(Device device) {
    count++;
    List<String> n = device.nodes().stream().map(this::at).toList();
    DeviceLaw law = device.law();
    if (law instanceof Resistance r) {
      line("R%d %s %s %.10g", count, n.get(0), n.get(1), r.ohms());
    } else if (law instanceof Potentiometer p) {
      line("R%da %s x%d %.10g", count, n.get(0), count, p.ohms() * p.position() + 1);
      line("R%db %s x%d %.10g", count, n.get(1), count, p.contact());
      line("R%dc %s x%d %.10g", count, n.get(2), count, p.ohms() * (1 - p.position()) + 1);
    } else if (law instanceof Capacitance c) {
      line("C%d %s %s %.10g", count, n.get(0), n.get(1), c.farads());
      line("R%d %s %s %.10g", count, n.get(0), n.get(1), c.leakOhms());
    } else if (law instanceof Junction d) {
      line("D%d %s %s m%d", count, n.get(0), n.get(1), count);
      String breakdown =
          Double.isFinite(d.breakdown())
              ? String.format(
                  Locale.ROOT,
                  " BV=%.10g IBV=%.10g NBV=%.10g",
                  d.breakdown(),
                  d.breakdownAmperes(),
                  d.breakdownEmission())
              : "";
      line(".model m%d D(IS=%.10g N=%.10g%s)", count, d.saturation(), d.emission(), breakdown);
    } else if (law instanceof BipolarTransistor q) {
      line("Q%d %s %s %s m%d", count, n.get(0), n.get(1), n.get(2), count);
      line(
          ".model m%d %s(IS=%.10g BF=%.10g BR=%.10g VAF=%.10g)",
          count,
          q.polarity() > 0 ? "NPN" : "PNP",
          q.saturation(),
          q.forwardGain(),
          q.reverseGain(),
          q.earlyVolts());
    } else if (law instanceof FieldEffectTransistor f) {
      fieldEffect(f, n);
    } else {
      written(law, n);
    }
  }

  private void fieldEffect(FieldEffectTransistor f, List<String> n) {
    if (!f.insulated()) {
      line("J%d %s %s %s m%d", count, n.get(0), n.get(1), n.get(2), count);
      line(
          ".model m%d %s(VTO=%.10g BETA=%.10g LAMBDA=%.10g IS=%.10g)",
          count,
          f.polarity() > 0 ? "NJF" : "PJF",
          f.threshold(),
          f.beta(),
          f.lambda(),
          f.saturation());
      return;
    }
    line("M%d %s %s %s %s m%d L=1u W=1u", count, n.get(0), n.get(1), n.get(2), n.get(2), count);
    line(
        ".model m%d %s(LEVEL=1 VTO=%.10g KP=%.10g LAMBDA=%.10g IS=1e-30)",
        count,
        f.polarity() > 0 ? "NMOS" : "PMOS",
        f.polarity() * f.threshold(),
        f.beta(),
        f.lambda());
    line(
        "D%d %s %s d%d",
        count, n.get(f.polarity() > 0 ? 2 : 0), n.get(f.polarity() > 0 ? 0 : 2), count);
    line(".model d%d D(IS=%.10g)", count, f.saturation());
  }

  /** What ngspice has no device for is written as controlled sources. */
  private void written(DeviceLaw law, List<String> n) {
    if (law instanceof OperationalAmplifier a) {
      amplifier(a, n);
    } else if (law instanceof OpenCollectorComparator c) {
      comparator(c, n);
    } else if (law instanceof LinearRegulator r) {
      regulator(r, n);
    } else if (law instanceof ShuntReference s) {
      String over = positive("v(%s,%s)-%.10g".formatted(n.get(0), n.get(1), s.volts()), 1e-4);
      String across = "0.1*ln(1+exp(v(%s,%s)/0.05))".formatted(n.get(2), n.get(1));
      line(
          "B%da %s %s I=0.15*%s*%s",
          count,
          n.get(2),
          n.get(1),
          bent("%.10g*%s".formatted(s.siemens() / 0.15, over)),
          bent(across));
      line(
          "B%db %s %s I=%.10g*%s",
          count, n.get(0), n.get(1), s.bias(), bent("v(%s,%s)".formatted(n.get(0), n.get(1))));
    } else if (law instanceof Valve v) {
      valve(v, n);
    } else {
      throw new AssertionError("no way to write " + law);
    }
  }

  private static String bent(String x) {
    return "((%1$s)/sqrt(1+(%1$s)*(%1$s)))".formatted(x);
  }

  private static String positive(String x, double width) {
    return "(0.5*((%1$s)+sqrt((%1$s)*(%1$s)+%2$.10g)))".formatted(x, width * width);
  }

  private void amplifier(OperationalAmplifier a, List<String> n) {
    String high = "v(" + n.get(3) + ")";
    String low = "v(" + n.get(4) + ")";
    String own = "a" + count;
    line(
        "B%d %sh 0 V=0.5*%s",
        count, own, positive("%s-%s-%.10g".formatted(high, low, a.below() + a.above()), 0.1));
    line(
        "B%da %sd 0 V=%s",
        count,
        own,
        bent(
            "%.10g*(v(%s,%s)+%.10g)/v(%sh)"
                .formatted(a.gain(), n.get(0), n.get(1), a.offset(), own)));
    line(
        "B%db %st 0 V=0.5*(%s+%s+%.10g)+v(%sh)*v(%sd)",
        count, own, high, low, a.above() - a.below(), own, own);
    line(
        "B%dc %si 0 V=%.10g*%s",
        count,
        own,
        a.limit(),
        bent("(v(%st)-v(%s))/%.10g".formatted(own, n.get(2), a.outputOhms() * a.limit())));
    line("B%dd 0 %s I=v(%si)", count, n.get(2), own);
    line("B%de %s 0 I=%s", count, n.get(3), positive("v(" + own + "i)", 1e-5));
    line("B%df %s 0 I=v(%si)-%s", count, n.get(4), own, positive("v(" + own + "i)", 1e-5));
    line("B%dg %s %s I=%.10g*%s", count, n.get(3), n.get(4), a.draw(), bent(high + "-" + low));
    line("R%d %s %s %.10g", count, n.get(0), n.get(1), a.inputOhms());
    for (int k = 0; k < 2; k++) {
      String room = a.bias() < 0 ? "v(%s,%s)" : "v(%2$s,%1$s)";
      String end = n.get(a.bias() < 0 ? 3 : 4);
      line(
          "B%dh%d %s %s I=%.10g*%s",
          count, k, n.get(k), end, a.bias(), bent("5*" + room.formatted(end, n.get(k))));
    }
  }

  private void comparator(OpenCollectorComparator c, List<String> n) {
    String on = bent("%.10g*v(%s,%s)".formatted(c.gain(), n.get(1), n.get(0)));
    String sunk = bent("v(%s,%s)/%.10g".formatted(n.get(2), n.get(4), c.onOhms() * c.limit()));
    line("B%d %s %s I=%.10g*0.5*(1+%s)*%s", count, n.get(2), n.get(4), c.limit(), on, sunk);
    line(
        "B%da %s %s I=%.10g*%s",
        count, n.get(3), n.get(4), c.draw(), bent("v(%s,%s)".formatted(n.get(3), n.get(4))));
    for (int k = 0; k < 2; k++) {
      line(
          "B%db%d %s %s I=%.10g*%s",
          count, k, n.get(k), n.get(3), c.bias(), bent("5*v(%s,%s)".formatted(n.get(3), n.get(k))));
    }
  }

  private void regulator(LinearRegulator r, List<String> n) {
    String input = "(%d*v(%s,%s))".formatted(r.polarity(), n.get(0), n.get(1));
    String output = "(%d*v(%s,%s))".formatted(r.polarity(), n.get(2), n.get(1));
    String least =
        "(%1$s-%2$.10g-%3$s)"
            .formatted(
                input,
                r.dropout(),
                positive("%s-%.10g".formatted(input, r.dropout() + r.volts()), 0.01));
    line("B%da g%da 0 V=%s", count, count, least);
    line(
        "B%db g%db 0 V=%s",
        count,
        count,
        positive("(v(g%da)-%s)/%.10g".formatted(count, output, r.outputOhms()), 1e-4));
    line(
        "B%dc %s %s I=%.10g*%s",
        count,
        n.get(0),
        n.get(2),
        r.polarity() * r.limit(),
        bent("v(g%db)/%.10g".formatted(count, r.limit())));
    line(
        "B%dd %s %s I=%.10g*%s",
        count, n.get(0), n.get(1), r.polarity() * r.quiescent(), bent(input));
    line("R%d %s %s %.10g", count, n.get(2), n.get(1), r.volts() / r.quiescent() * 100);
  }

  private void valve(Valve v, List<String> n) {
    // ngspice's exp goes on as a straight line above 228, so it is given negative values only
    String anode =
        "(0.5*(v(%1$s,%2$s)+abs(v(%1$s,%2$s)))+ln(1+exp(-abs(v(%1$s,%2$s)))))"
            .formatted(n.get(0), n.get(2));
    String grid = "v(%s,%s)".formatted(n.get(1), n.get(2));
    line("B%da g%da 0 V=%s", count, count, anode);
    if (v.pentode()) {
      line(
          "B%db g%db 0 V=%s",
          count, count, positive("v(%s,%s)".formatted(n.get(3), n.get(2)), 0.1));
    }
    String field = v.pentode() ? "v(g%db)".formatted(count) : "v(g%da)".formatted(count);
    String root = v.pentode() ? field : "sqrt(%.10g+%s*%s)".formatted(v.kvb(), field, field);
    line(
        "B%dc g%dc 0 V=%s/%.10g*ln(1+exp(%.10g*(%.10g+%s/%s)))",
        count, count, field, v.kp(), v.kp(), 1 / v.mu(), grid, root);
    line(
        "B%dd %s %s I=%.10g*pow(abs(v(g%dc)),%.10g)%s",
        count,
        n.get(0),
        n.get(2),
        2 / v.kg1(),
        count,
        v.exponent(),
        v.pentode() ? "*atan(v(g%da)/%.10g)".formatted(count, v.kvb()) : "");
    line("B%de %s %s I=pow(%s,1.5)/2000", count, n.get(1), n.get(2), positive(grid + "-0.2", 0.01));
    if (v.pentode()) {
      line(
          "B%df %s %s I=pow(%s,1.5)/%.10g",
          count,
          n.get(3),
          n.get(2),
          positive("%s/%.10g+%s".formatted(field, v.mu(), grid), 0.01),
          v.kg2());
    }
  }
}
