package org.relegend.demo.page;

import static java.util.Map.entry;
import static org.relegend.demo.page.Heading.DOWN;
import static org.relegend.demo.page.Heading.LEFT;
import static org.relegend.demo.page.Heading.RIGHT;
import static org.relegend.demo.page.Heading.UP;

import java.util.Map;
import java.util.Set;
import org.relegend.demo.design.Design;
import org.relegend.demo.page.Canvas.Align;

/** The mains part and the two regulated supplies, as the factory drew them. */
final class SupplySheet {
  static final double WIDTH = 841.89;
  static final double HEIGHT = 595.28;

  private final Plan plan;
  private final Symbols symbols;

  SupplySheet(Plan plan, Design design) {
    this.plan = plan;
    symbols =
        new Symbols(
            plan,
            design,
            Map.ofEntries(
                entry("230 V AC inlet block", "230V"),
                entry("T100mA 250 V", "T100mA"),
                entry("100n X-class 275 V AC", "100n X"),
                entry("1M 0.5W mains-rated", "1M"),
                entry("230 V : 17-0-17 V 6 VA", "17-0-17"),
                entry("1 A 100 V", "1A"),
                entry("1000u 40V", "1000u"),
                entry("100u 25V", "100u"),
                entry("4k7 0.5W", "4k7"),
                entry("1k 0.5W", "1k"),
                entry("16V 0.5W", "16V")),
            Set.of("C1"));
  }

  void draw() {
    plan.origin(0.5, 3);
    mains();
    transformer();
    rectifier();
    positive();
    negative();
    threshold();
    plan.text("DANGER: MAINS VOLTAGE ON THE LEFT OF THIS SHEET", 5, 41.5, 8, Align.LEFT);
    plan.text("RAW RAILS +23 AND -23 V, VP +15.3 V, VN -15.3 V", 5, 43.3, 7, Align.LEFT);
    plan.text("ALL VOLTAGES TO 0V, NO SIGNAL", 5, 44.8, 7, Align.LEFT);
    plan.text("R1 TO R5 0.5W, R8 1W, C2 C3 40V, C4 C5 25V", 5, 46.3, 7, Align.LEFT);
    plan.origin(0, 0);
    Border.draw(
        plan,
        WIDTH / Plan.UNIT,
        HEIGHT / Plan.UNIT,
        "TYPE 40 PROGRAMME LEVELLER",
        "POWER SUPPLY",
        "SHEET 2 OF 2");
  }

  private void mains() {
    plan.stroke(Plan.WIRE, 4, 12, 7, 12, 7, 28, 4, 28, 4, 12);
    plan.body(Mark.Kind.BODY, "J1", 4, 12, 7, 12, 7, 28, 4, 28);
    plan.name("J1", 5.5, 11.2, Align.MIDDLE);
    plan.value("230~", 5.5, 29.3, Align.MIDDLE);
    String[] pins = {"L", "N", "E"};
    double[] heights = {14, 20, 26};
    for (int k = 0; k < 3; k++) {
      plan.circle(6.2, heights[k], 0.4, Plan.WIRE);
      plan.stroke(Plan.WIRE, 6.6, heights[k], 8, heights[k]);
      plan.pin("J1", pins[k], new Dot(8, heights[k]));
      plan.text(pins[k], 5.2, heights[k] + 0.3, 8, Align.RIGHT);
    }
    plan.wire(8, 14, 10.5, 14);
    symbols.fuse("F1", 12.5, 14, RIGHT);
    plan.wire(14.5, 14, 17.5, 14);
    plan.wire(8, 20, 17.5, 20);
    mainsSwitch();
    plan.wire(21.5, 14, 25, 14);
    plan.wire(21.5, 20, 25, 20);
    symbols.capacitor("C1", 25, 17, DOWN);
    plan.wire(25, 14, 25, 15.5);
    plan.wire(25, 18.5, 25, 20);
    plan.joint(25, 14);
    plan.joint(25, 20);
    symbols.resistor("R1", 29.5, 17, DOWN);
    plan.wire(29.5, 14, 29.5, 14.5);
    plan.wire(29.5, 19.5, 29.5, 20);
    plan.joint(29.5, 14);
    plan.joint(29.5, 20);
    plan.wire(25, 14, 29.5, 14);
    plan.wire(25, 20, 29.5, 20);
    plan.wire(29.5, 14, 34, 14);
    plan.wire(29.5, 20, 34, 20);
  }

  private void mainsSwitch() {
    for (int k = 0; k < 2; k++) {
      double y = 14 + 6 * k;
      plan.stroke(Plan.WIRE, 17.5, y, 18.2, y);
      plan.circle(18.4, y, 0.2, Plan.THIN);
      plan.stroke(Plan.WIRE, 18.5, y - 0.2, 20.6, y - 1.3);
      plan.circle(20.6, y, 0.2, Plan.THIN);
      plan.stroke(Plan.WIRE, 20.8, y, 21.5, y);
      plan.pin("SW1", k == 0 ? "1" : "3", new Dot(17.5, y));
      plan.pin("SW1", k == 0 ? "2" : "4", new Dot(21.5, y));
    }
    for (double y = 13.5; y < 18.8; y += 0.9) {
      plan.stroke(Plan.THIN, 19.6, y, 19.6, y + 0.5);
    }
    plan.body(Mark.Kind.BODY, "SW1", 18, 12.5, 21, 12.5, 21, 20.5, 18, 20.5);
    plan.name("SW1", 19.5, 11.8, Align.MIDDLE);
  }

  private void transformer() {
    coil(34, 14, 20, 1);
    coil(40, 12, 17, -1);
    coil(40, 17, 22, -1);
    plan.stroke(Plan.BOLD, 36.6, 12, 36.6, 22);
    plan.stroke(Plan.BOLD, 37.4, 12, 37.4, 22);
    plan.stroke(Plan.THIN, 35.9, 13, 35.9, 23.5);
    plan.stroke(Plan.WIRE, 35.9, 23.5, 35.9, 25);
    String[] pins = {"1", "2", "3", "4", "5", "6"};
    double[] x = {34, 34, 40, 40, 40, 35.9};
    double[] y = {14, 20, 12, 17, 22, 25};
    for (int k = 0; k < 6; k++) {
      plan.pin("T1", pins[k], new Dot(x[k], y[k]));
      boolean primary = k < 2;
      plan.text(
          pins[k],
          x[k] + (primary ? -0.3 : 0.3),
          y[k] - 0.35,
          6,
          primary ? Align.RIGHT : Align.LEFT);
    }
    plan.body(Mark.Kind.BODY, "T1", 34, 11.5, 40, 11.5, 40, 23, 34, 23);
    symbols.beside("T1", 37, 9.6, Align.MIDDLE);
    plan.wire(8, 26, 35.9, 26);
    plan.wire(35.9, 25, 35.9, 26);
    plan.joint(35.9, 26);
    plan.wire(35.9, 26, 35.9, 30, 34.5, 30);
    symbols.resistor("R8", 32, 30, LEFT);
    plan.wire(29.5, 30, 28.5, 30, 28.5, 31);
    symbols.ground(28.5, 31);
    plan.wire(40, 17, 42, 17, 42, 18);
    symbols.ground(42, 18);
  }

  private void coil(double x, double from, double to, int side) {
    int turns = 4;
    double pitch = (to - from) / turns;
    double[] run = new double[2 * (turns * 8 + 1)];
    for (int k = 0; k <= turns * 8; k++) {
      double angle = Math.PI * (k % 8) / 8;
      run[2 * k] = x + side * (0.5 + 0.9 * StrictMath.sin(angle));
      run[2 * k + 1] = from + pitch * k / 8.0;
    }
    plan.stroke(Plan.WIRE, x, from, run[0], run[1]);
    plan.stroke(Plan.WIRE, run);
    plan.stroke(Plan.WIRE, x, to, run[run.length - 2], run[run.length - 1]);
  }

  private void rectifier() {
    plan.stroke(Plan.WIRE, 50, 13, 54, 17, 50, 21, 46, 17, 50, 13);
    double[][] diodes = {{52, 15, 1, 1}, {52, 19, 1, -1}, {48, 15, 1, -1}, {48, 19, 1, 1}};
    for (double[] d : diodes) {
      small(d[0], d[1], d[2], d[3]);
    }
    plan.pin("BR1", "AC1", new Dot(50, 13));
    plan.pin("BR1", "AC2", new Dot(50, 21));
    plan.pin("BR1", "PLUS", new Dot(54, 17));
    plan.pin("BR1", "MINUS", new Dot(46, 17));
    plan.body(Mark.Kind.BODY, "BR1", 50, 13, 54, 17, 50, 21, 46, 17);
    plan.name("BR1", 50, 16.9, Align.MIDDLE);
    plan.value("1A", 50, 17.9, Align.MIDDLE);
    plan.wire(40, 12, 50, 12, 50, 13);
    plan.wire(40, 22, 50, 22, 50, 21);
    plan.wire(54, 17, 55, 17, 55, 9, 57, 9);
    plan.wire(46, 17, 45, 17, 45, 35, 57, 35);
  }

  /** A small diode on the bridge's side, pointing along (dx, dy). */
  private void small(double x, double y, double dx, double dy) {
    double s = 0.62;
    double ux = dx * 0.7071;
    double uy = dy * 0.7071;
    double tx = x + ux * s;
    double ty = y + uy * s;
    plan.fill(
        tx, ty, x - ux * s - uy * s, y - uy * s + ux * s, x - ux * s + uy * s, y - uy * s - ux * s);
    plan.stroke(Plan.BOLD, tx - uy * s, ty + ux * s, tx + uy * s, ty - ux * s);
  }

  private void positive() {
    plan.wire(57, 9, 61, 9);
    plan.wire(61, 9, 66, 9);
    plan.wire(66, 9, 69, 9);
    symbols.polarised("C2", 57, 14, DOWN);
    plan.wire(57, 9, 57, 12.5);
    plan.joint(57, 9);
    plan.wire(57, 15.5, 57, 22);
    symbols.resistor("R2", 61, 16, DOWN);
    plan.wire(61, 9, 61, 13.5);
    plan.joint(61, 9);
    plan.wire(61, 18.5, 61, 22);
    symbols.resistor("R4", 66, 12, DOWN);
    plan.wire(66, 9, 66, 9.5);
    plan.joint(66, 9);
    plan.wire(66, 14.5, 66, 15.5);
    plan.wire(66, 15.5, 71.5, 15.5);
    plan.joint(66, 15.5);
    symbols.diode("D5", 66, 18, UP, true);
    plan.wire(66, 15.5, 66, 16.5);
    plan.wire(66, 19.5, 66, 22);
    symbols.polarised("C4", 71.5, 18, DOWN);
    plan.wire(71.5, 15.5, 71.5, 16.5);
    plan.joint(71.5, 15.5);
    plan.wire(71.5, 19.5, 71.5, 22);
    symbols.bipolar("Q1", new String[] {"B", "C", "E"}, 71.5, 12, UP, true, true);
    plan.wire(71.5, 12, 71.5, 15.5);
    plan.name("Q1", 71.5, 7.2, Align.MIDDLE);
    plan.wire(74, 9, 77.5, 9);
    plan.wire(77.5, 9, 79.3, 9);
    plan.joint(77.5, 9);
    symbols.net("VP", "VP", 79.3, 9, Align.LEFT);
    plan.wire(57, 22, 61, 22);
    plan.wire(61, 22, 66, 22);
    plan.wire(66, 22, 71.5, 22);
    plan.wire(71.5, 22, 77.5, 22);
    plan.joint(57, 22);
    plan.joint(61, 22);
    plan.joint(66, 22);
    plan.joint(71.5, 22);
    plan.wire(77.5, 22, 80.2, 22, 80.2, 23);
    symbols.ground(80.2, 23);
  }

  private void negative() {
    plan.wire(57, 35, 61, 35);
    plan.wire(61, 35, 66, 35);
    plan.wire(66, 35, 69, 35);
    symbols.polarised("C3", 57, 30, DOWN);
    plan.wire(57, 22, 57, 28.5);
    plan.wire(57, 31.5, 57, 35);
    plan.joint(57, 35);
    symbols.resistor("R3", 61, 28, DOWN);
    plan.wire(61, 22, 61, 25.5);
    plan.wire(61, 30.5, 61, 35);
    plan.joint(61, 35);
    symbols.resistor("R5", 66, 32, UP);
    plan.wire(66, 34.5, 66, 35);
    plan.joint(66, 35);
    plan.wire(66, 29.5, 66, 28.5);
    plan.wire(66, 28.5, 71.5, 28.5);
    plan.joint(66, 28.5);
    symbols.diode("D6", 66, 26, UP, true);
    plan.wire(66, 28.5, 66, 27.5);
    plan.wire(66, 24.5, 66, 22);
    symbols.polarised("C5", 71.5, 26, DOWN);
    plan.wire(71.5, 22, 71.5, 24.5);
    plan.wire(71.5, 27.5, 71.5, 28.5);
    plan.joint(71.5, 28.5);
    symbols.bipolar("Q2", new String[] {"B", "E", "C"}, 71.5, 32, DOWN, false, false);
    plan.wire(71.5, 32, 71.5, 28.5);
    plan.name("Q2", 71.5, 37.6, Align.MIDDLE);
    plan.wire(74, 35, 79.3, 35);
    symbols.net("VN", "VN", 79.3, 35, Align.LEFT);
  }

  private void threshold() {
    symbols.resistor("R6", 77.5, 12, DOWN);
    plan.wire(77.5, 9, 77.5, 9.5);
    plan.wire(77.5, 14.5, 77.5, 15.5);
    plan.wire(77.5, 15.5, 79.3, 15.5);
    plan.joint(77.5, 15.5);
    symbols.net("THR", "THR", 79.3, 15.5, Align.LEFT);
    symbols.resistor("R7", 77.5, 18.5, DOWN);
    plan.wire(77.5, 15.5, 77.5, 16);
    plan.wire(77.5, 21, 77.5, 22);
    plan.joint(77.5, 22);
  }
}
