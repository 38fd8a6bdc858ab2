package org.relegend.demo.page;

import java.util.Map;
import java.util.Set;
import org.relegend.demo.design.Design;
import org.relegend.demo.page.Canvas.Align;
import org.relegend.demo.page.Mark.Kind;

/**
 * Draws circuit symbols after the common shapes of IEC 60617: boxes for resistors, plates, arrows;
 * pins are noted at their wire ends. All lengths in drawing units.
 */
final class Symbols {
  private final Plan plan;
  private final Design design;
  private final Map<String, String> shortened;
  private final Set<String> leftNamed;

  /**
   * @param shortened values as the sheet prints them, where not as in the tables
   * @param leftNamed upright parts whose name stands on their left
   */
  Symbols(Plan plan, Design design, Map<String, String> shortened, Set<String> leftNamed) {
    this.plan = plan;
    this.design = design;
    this.shortened = shortened;
    this.leftNamed = leftNamed;
  }

  /** A resistor of length 5 between its pins, pin 1 first along the heading. */
  void resistor(String part, double x, double y, Heading heading) {
    leads(part, "1", "2", x, y, heading, 2.5, 1.5);
    box(part, x, y, heading, 1.5, 0.5);
    caption(part, x, y, heading, 0.9);
  }

  /** A capacitor of length 3. */
  void capacitor(String part, double x, double y, Heading heading) {
    leads(part, "1", "2", x, y, heading, 1.5, 0.28);
    plate(x, y, heading, -0.28);
    plate(x, y, heading, 0.28);
    outline(part, x, y, heading, 0.5, 1.0);
    caption(part, x, y, heading, 1.35);
  }

  /** A polarised capacitor of length 3, plus first along the heading. */
  void polarised(String part, double x, double y, Heading heading) {
    leads(part, "+", "-", x, y, heading, 1.5, 0.35);
    shape(Plan.THIN, x, y, heading, true, -0.45, -1, -0.15, -1, -0.15, 1, -0.45, 1);
    plate(x, y, heading, 0.3);
    plate(x, y, heading, 0.22);
    shape(Plan.THIN, x, y, heading, false, -1.15, -0.75, -0.65, -0.75);
    shape(Plan.THIN, x, y, heading, false, -0.9, -1.0, -0.9, -0.5);
    outline(part, x, y, heading, 0.5, 1.0);
    caption(part, x, y, heading, 1.35);
  }

  /** A diode of length 3, anode first along the heading; a Zener's bar is bent. */
  void diode(String part, double x, double y, Heading heading, boolean zener) {
    leads(part, "A", "K", x, y, heading, 1.5, 0.6);
    shape(Plan.WIRE, x, y, heading, true, -0.6, -0.7, -0.6, 0.7, 0.6, 0);
    if (zener) {
      shape(Plan.BOLD, x, y, heading, false, 0.25, -0.7, 0.6, -0.7, 0.6, 0.7);
    } else {
      shape(Plan.BOLD, x, y, heading, false, 0.6, -0.7, 0.6, 0.7);
    }
    outline(part, x, y, heading, 0.7, 0.7);
    caption(part, x, y, heading, 1.1);
  }

  /** A fuse of length 4. */
  void fuse(String part, double x, double y, Heading heading) {
    leads(part, "1", "2", x, y, heading, 2, 1.3);
    box(part, x, y, heading, 1.3, 0.45);
    shape(Plan.THIN, x, y, heading, false, -1.3, 0, 1.3, 0);
    caption(part, x, y, heading, 0.9);
  }

  /**
   * A bipolar transistor: base pin at the place, the others 3 ahead and 2.5 to either side.
   *
   * @param subject a part, or a section of one
   * @param pins the base, the pin on the left of the heading, the pin on its right
   * @param emitterRight which of the two has the arrow
   */
  void bipolar(
      String subject,
      String[] pins,
      double x,
      double y,
      Heading heading,
      boolean emitterRight,
      boolean npn) {
    String part = subject.contains("/") ? subject.substring(0, subject.indexOf('/')) : subject;
    shape(Plan.WIRE, x, y, heading, false, 0, 0, 1.2, 0);
    shape(Plan.BOLD, x, y, heading, false, 1.2, -1.1, 1.2, 1.1);
    for (int side = -1; side <= 1; side += 2) {
      shape(Plan.WIRE, x, y, heading, false, 1.2, side * 0.45, 3, side * 1.6, 3, side * 2.5);
    }
    arrow(x, y, heading, emitterRight ? 1 : -1, npn);
    Dot middle = heading.from(x, y, 2.05, 0);
    plan.circle(middle.x(), middle.y(), 1.85, Plan.THIN);
    plan.pin(part, pins[0], heading.from(x, y, 0, 0));
    plan.pin(part, pins[1], heading.from(x, y, 3, -2.5));
    plan.pin(part, pins[2], heading.from(x, y, 3, 2.5));
    round(subject, middle);
  }

  /** One of two transistors whose emitters are joined inside: its emitter is no pin of its own. */
  void pairHalf(String section, double x, double y, Heading heading, boolean mirrored) {
    int side = mirrored ? -1 : 1;
    shape(Plan.WIRE, x, y, heading, false, 0, 0, 1.2, 0);
    shape(Plan.BOLD, x, y, heading, false, 1.2, -1.1, 1.2, 1.1);
    for (int k = -1; k <= 1; k += 2) {
      shape(Plan.WIRE, x, y, heading, false, 1.2, k * 0.45, 3, k * 1.6, 3, k * 2.5);
    }
    arrow(x, y, heading, side, true);
    Dot middle = heading.from(x, y, 2.05, 0);
    plan.circle(middle.x(), middle.y(), 1.85, Plan.THIN);
    round(section, middle);
  }

  /** A junction FET with an N channel: gate at the place, drain and source 3 ahead. */
  void njfet(String part, String left, String right, double x, double y, Heading heading) {
    shape(Plan.WIRE, x, y, heading, false, 0, 0, 1.3, 0);
    shape(Plan.BOLD, x, y, heading, false, 1.3, -1.2, 1.3, 1.2);
    shape(Plan.WIRE, x, y, heading, true, 1.3, 0, 0.7, -0.35, 0.7, 0.35);
    for (int side = -1; side <= 1; side += 2) {
      shape(Plan.WIRE, x, y, heading, false, 1.3, side * 0.9, 3, side * 0.9, 3, side * 2.5);
    }
    Dot middle = heading.from(x, y, 2.05, 0);
    plan.circle(middle.x(), middle.y(), 1.85, Plan.THIN);
    plan.pin(part, "G", heading.from(x, y, 0, 0));
    plan.pin(part, left, heading.from(x, y, 3, -2.5));
    plan.pin(part, right, heading.from(x, y, 3, 2.5));
    round(part, middle);
  }

  /** A jack: tip at the place's height, sleeve 2 below; its pins 2 ahead. */
  void jack(String part, String use, double x, double y, Heading heading) {
    double d = heading == Heading.RIGHT ? 1 : -1;
    plan.stroke(Plan.BOLD, x - 1.5 * d, y - 0.9, x - 1.5 * d, y + 2.9);
    plan.stroke(Plan.WIRE, x - 1.5 * d, y + 2, x + 2 * d, y + 2);
    plan.stroke(Plan.WIRE, x + 2 * d, y, x + 0.3 * d, y, x - 0.3 * d, y + 0.7, x - 0.9 * d, y);
    plan.pin(part, "T", new Dot(x + 2 * d, y));
    plan.pin(part, "S", new Dot(x + 2 * d, y + 2));
    double far = x - 1.7 * d;
    double near = x + 0.8 * d;
    plan.body(Kind.BODY, part, far, y - 0.9, near, y - 0.9, near, y + 2.9, far, y + 2.9);
    plan.name(part, x, y - 1.3, Align.MIDDLE);
    plan.value(use, x, y + 4.2, Align.MIDDLE);
  }

  /** Half of a dual op-amp: its left edge's middle at the place, inputs 2 above and below. */
  void amplifier(
      String part, String section, String out, String minus, String plus, double x, double y) {
    plan.stroke(Plan.WIRE, x, y - 4, x, y + 4, x + 5, y, x, y - 4);
    plan.body(Kind.SECTION, part + "/" + section, x, y - 4, x + 5, y, x, y + 4);
    plan.stroke(Plan.WIRE, x - 1, y - 2, x, y - 2);
    plan.stroke(Plan.WIRE, x - 1, y + 2, x, y + 2);
    plan.stroke(Plan.WIRE, x + 5, y, x + 6, y);
    plan.pin(part, plus, new Dot(x - 1, y - 2));
    plan.pin(part, minus, new Dot(x - 1, y + 2));
    plan.pin(part, out, new Dot(x + 6, y));
    plan.text(plus, x - 0.3, y - 2.3, 6, Align.RIGHT);
    plan.text(minus, x - 0.3, y + 1.7, 6, Align.RIGHT);
    plan.text(out, x + 5.2, y - 0.4, 6, Align.LEFT);
    plan.text("+", x + 0.35, y - 1.7, 9, Align.LEFT);
    plan.text("-", x + 0.4, y + 2.3, 9, Align.LEFT);
    plan.name(part, x + 1.1, y + 0.3, Align.LEFT);
  }

  /** A part's name and value beside it. */
  void beside(String part, double x, double y, Align align) {
    plan.name(part, x, y, align);
    plan.value(value(part), x, y + 0.95, align);
  }

  /** An earth symbol for the reference net; the wire comes from above. */
  void ground(double x, double y) {
    plan.stroke(Plan.BOLD, x - 0.7, y, x + 0.7, y);
    plan.stroke(Plan.THIN, x - 0.45, y + 0.3, x + 0.45, y + 0.3);
    plan.stroke(Plan.THIN, x - 0.2, y + 0.6, x + 0.2, y + 0.6);
    plan.label("0V", x, y);
  }

  /** A net's name at the end of a wire. */
  void net(String net, String shown, double x, double y, Align align) {
    double shift = align == Align.LEFT ? 0.4 : -0.4;
    plan.circle(x, y, 0.18, Plan.THIN);
    plan.text(shown, x + shift, y + 0.3, 8, align);
    plan.label(net, x, y);
  }

  String value(String part) {
    String value = design.part(part).value();
    return shortened.getOrDefault(value, value);
  }

  private void leads(
      String part,
      String first,
      String last,
      double x,
      double y,
      Heading heading,
      double reach,
      double body) {
    shape(Plan.WIRE, x, y, heading, false, -reach, 0, -body, 0);
    shape(Plan.WIRE, x, y, heading, false, body, 0, reach, 0);
    plan.pin(part, first, heading.from(x, y, -reach, 0));
    plan.pin(part, last, heading.from(x, y, reach, 0));
  }

  private void box(String part, double x, double y, Heading heading, double half, double across) {
    shape(
        Plan.WIRE, x, y, heading, true, -half, -across, half, -across, half, across, -half, across);
    outline(part, x, y, heading, half, across);
  }

  private void outline(
      String part, double x, double y, Heading heading, double half, double across) {
    double a = heading.level() ? half : across;
    double b = heading.level() ? across : half;
    plan.body(Kind.BODY, part, x - a, y - b, x + a, y - b, x + a, y + b, x - a, y + b);
  }

  private void round(String subject, Dot middle) {
    Kind kind = subject.contains("/") ? Kind.SECTION : Kind.BODY;
    double r = 1.85;
    double x = middle.x();
    double y = middle.y();
    plan.body(kind, subject, x - r, y - r, x + r, y - r, x + r, y + r, x - r, y + r);
  }

  private void caption(String part, double x, double y, Heading heading, double clear) {
    if (heading.level()) {
      plan.name(part, x, y - clear, Align.MIDDLE);
      plan.value(value(part), x, y + clear + 0.55, Align.MIDDLE);
    } else if (leftNamed.contains(part)) {
      plan.name(part, x - clear, y - 0.1, Align.RIGHT);
      plan.value(value(part), x - clear, y + 0.8, Align.RIGHT);
    } else {
      plan.name(part, x + clear, y - 0.1, Align.LEFT);
      plan.value(value(part), x + clear, y + 0.8, Align.LEFT);
    }
  }

  private void plate(double x, double y, Heading heading, double along) {
    shape(Plan.BOLD, x, y, heading, false, along, -1, along, 1);
  }

  private void arrow(double x, double y, Heading heading, int side, boolean npn) {
    double fromA = npn ? 1.75 : 2.1;
    double fromB = side * (npn ? 0.8 : 1.03);
    double toA = npn ? 2.6 : 1.3;
    double toB = side * (npn ? 1.35 : 0.52);
    double dx = toA - fromA;
    double dy = toB - fromB;
    double length = Math.sqrt(dx * dx + dy * dy);
    double wingA = -dy / length * 0.3;
    double wingB = dx / length * 0.3;
    Dot tip = heading.from(x, y, toA, toB);
    Dot one = heading.from(x, y, fromA + wingA, fromB + wingB);
    Dot two = heading.from(x, y, fromA - wingA, fromB - wingB);
    plan.fill(tip.x(), tip.y(), one.x(), one.y(), two.x(), two.y());
  }

  private void shape(
      double width, double x, double y, Heading heading, boolean closed, double... places) {
    int count = places.length / 2 + (closed ? 1 : 0);
    double[] run = new double[2 * count];
    for (int k = 0; k < count; k++) {
      int n = k % (places.length / 2);
      Dot at = heading.from(x, y, places[2 * n], places[2 * n + 1]);
      run[2 * k] = at.x();
      run[2 * k + 1] = at.y();
    }
    plan.stroke(width, run);
  }
}
