package org.relegend.demo.page;

import static org.relegend.demo.page.Heading.DOWN;
import static org.relegend.demo.page.Heading.LEFT;
import static org.relegend.demo.page.Heading.RIGHT;

import java.util.Map;
import java.util.Set;
import org.relegend.demo.design.Design;
import org.relegend.demo.page.Canvas.Align;

/**
 * The signal path of both channels, as the factory drew it: the halves of the dual op-amp stand
 * exchanged against the copper.
 */
final class ChannelSheet {
  static final double WIDTH = 1190.55;
  static final double HEIGHT = 841.89;

  private final Plan plan;
  private final Symbols symbols;
  private String n = "1";

  ChannelSheet(Plan plan, Design design) {
    this.plan = plan;
    symbols =
        new Symbols(
            plan,
            design,
            Map.of(
                "1u film",
                "1u",
                "10u 25V bead",
                "10u 25V",
                "47p polystyrene",
                "47p",
                "1u 35V bead",
                "1u 35V",
                "100n disc",
                "100n",
                "10k preset",
                "10k",
                "small-signal Si",
                ""),
            Set.of("R113", "R118", "R119", "R122", "C106", "R213", "R218", "R219", "R222", "C206"));
  }

  void draw() {
    channel("1", "CHANNEL A", 2.6);
    channel("2", "CHANNEL B", 41);
    plan.origin(0, 0);
    Border.draw(
        plan,
        WIDTH / Plan.UNIT,
        HEIGHT / Plan.UNIT,
        "TYPE 40 PROGRAMME LEVELLER",
        "SIGNAL PATH, BOTH CHANNELS",
        "SHEET 1 OF 2");
  }

  private void channel(String number, String title, double down) {
    n = number;
    plan.origin(2.5, down);
    plan.text(title, 2, 3.4, 11, Align.LEFT);
    rails();
    inputStage();
    gainCell();
    mirror();
    differenceAmp();
    buffer();
    detector();
    if (number.equals("2")) {
      meter();
    }
  }

  private String name(String template) {
    return template.replace("n", n);
  }

  private void rails() {
    plan.wire(17, 1, 112, 1);
    plan.wire(33, 36, 112, 36);
    symbols.net("VP", "VP", 17, 1, Align.RIGHT);
    symbols.net("VN", "VN", 33, 36, Align.RIGHT);
    symbols.capacitor(name("Cn06"), 112, 20, DOWN);
    plan.wire(112, 1, 112, 18.5);
    plan.wire(112, 21.5, 112, 36);
  }

  private void inputStage() {
    String jack = name("Jn01");
    symbols.jack(jack, "IN", 5, 15, RIGHT);
    plan.wire(7, 15, 9, 15);
    plan.wire(9, 15, 11.5, 15);
    plan.joint(9, 15);
    symbols.resistor(name("Rn01"), 9, 19, DOWN);
    plan.wire(9, 15, 9, 16.5);
    plan.wire(9, 21.5, 9, 22.5);
    symbols.ground(9, 22.5);
    plan.wire(7, 17, 7, 18);
    symbols.ground(7, 18);
    symbols.capacitor(name("Cn01"), 13, 15, RIGHT);
    plan.wire(14.5, 15, 17, 15);
    plan.wire(17, 15, 19, 15);
    plan.joint(17, 15);
    symbols.resistor(name("Rn02"), 17, 6, DOWN);
    plan.wire(17, 1, 17, 3.5);
    plan.wire(17, 8.5, 17, 15);
    symbols.resistor(name("Rn03"), 17, 20, DOWN);
    plan.wire(17, 15, 17, 17.5);
    plan.wire(17, 22.5, 17, 23.5);
    symbols.ground(17, 23.5);
    symbols.bipolar(name("Qn01"), new String[] {"B", "C", "E"}, 19, 15, RIGHT, true, true);
    plan.name(name("Qn01"), 23.4, 14.9, Align.LEFT);
    symbols.resistor(name("Rn04"), 22, 6, DOWN);
    plan.wire(22, 1, 22, 3.5);
    plan.joint(22, 1);
    plan.wire(22, 8.5, 22, 11);
    plan.wire(22, 11, 22, 12.5);
    plan.joint(22, 11);
    symbols.resistor(name("Rn05"), 22, 20.5, DOWN);
    plan.wire(22, 17.5, 22, 18);
    plan.wire(22, 23, 22, 23.5);
    symbols.ground(22, 23.5);
  }

  private void gainCell() {
    String array = name("Un01");
    plan.wire(22, 11, 24.5, 11);
    symbols.polarised(name("Cn02"), 26, 11, RIGHT);
    plan.wire(27.5, 11, 28.5, 11);
    symbols.resistor(name("Rn06"), 31, 11, RIGHT);
    plan.wire(33.5, 11, 35, 11);
    plan.wire(35, 11, 37, 11);
    plan.joint(35, 11);
    symbols.resistor(name("Rn07"), 35, 15, DOWN);
    plan.wire(35, 11, 35, 12.5);
    plan.wire(35, 17.5, 35, 18.5);
    symbols.ground(35, 18.5);
    half(array, "Ta", "2", "1", 37, RIGHT, false);
    half(array, "Tb", "4", "5", 49, LEFT, true);
    plan.stroke(Plan.WIRE, 40, 13.5, 40, 14.5, 46, 14.5, 46, 13.5);
    plan.stroke(Plan.WIRE, 43, 14.5, 43, 15.5);
    plan.pin(array, "3", new Dot(43, 15.5));
    number("3", 43.3, 15.4, Align.LEFT);
    plan.name(array, 43, 11.4, Align.MIDDLE);
    plan.value("Ta Tb", 43, 12.4, Align.MIDDLE);
    load("Rn10", 40, 8);
    load("Rn11", 46, 7);
    number("1", 39.6, 8.9, Align.RIGHT);
    number("5", 46.3, 8.9, Align.LEFT);
    number("2", 37, 10.7, Align.RIGHT);
    number("4", 49, 10.7, Align.LEFT);
    plan.wire(49, 11, 50.5, 11);
    plan.wire(50.5, 11, 52, 11);
    plan.joint(50.5, 11);
    symbols.resistor(name("Rn08"), 50.5, 15, DOWN);
    plan.wire(50.5, 11, 50.5, 12.5);
    plan.wire(50.5, 17.5, 50.5, 18.5);
    symbols.ground(50.5, 18.5);
    symbols.resistor(name("Rn09"), 54.5, 11, LEFT);
    preset();
  }

  /** One transistor of the pair; its emitter runs into the pair's common one. */
  private void half(
      String array,
      String section,
      String base,
      String collector,
      double x,
      Heading heading,
      boolean right) {
    double ahead = heading == RIGHT ? 3 : -3;
    symbols.pairHalf(array + "/" + section, x, 11, heading, right);
    plan.pin(array, base, new Dot(x, 11));
    plan.pin(array, collector, new Dot(x + ahead, 8.5));
  }

  private void load(String resistor, double x, double tap) {
    symbols.resistor(name(resistor), x, 4, DOWN);
    plan.wire(x, 1, x, 1.5);
    plan.joint(x, 1);
    plan.wire(x, 6.5, x, tap);
    plan.wire(x, tap, x, 8.5);
    plan.joint(x, tap);
  }

  private void preset() {
    String part = name("RVn01");
    plan.wire(57, 11, 57.5, 11);
    plan.stroke(Plan.WIRE, 57.5, 11, 58.9, 11);
    plan.fill(59, 11, 58.4, 10.7, 58.4, 11.3);
    plan.stroke(Plan.WIRE, 59.5, 8.5, 59.5, 9.5);
    plan.stroke(Plan.WIRE, 59, 9.5, 60, 9.5, 60, 12.5, 59, 12.5, 59, 9.5);
    plan.stroke(Plan.WIRE, 59.5, 12.5, 59.5, 13.5);
    plan.body(Mark.Kind.BODY, part, 59, 9.5, 60, 9.5, 60, 12.5, 59, 12.5);
    plan.pin(part, "W", new Dot(57.5, 11));
    plan.pin(part, "1", new Dot(59.5, 8.5));
    plan.pin(part, "3", new Dot(59.5, 13.5));
    symbols.beside(part, 60.5, 13.5, Align.LEFT);
    plan.wire(59.5, 1, 59.5, 8.5);
    plan.joint(59.5, 1);
    plan.wire(59.5, 13.5, 59.5, 36);
    plan.joint(59.5, 36);
  }

  private void mirror() {
    String array = name("Un01");
    plan.wire(43, 15.5, 43, 23.5);
    symbols.bipolar(array + "/Tc", new String[] {"6", "8", "7"}, 40, 26, RIGHT, true, true);
    symbols.bipolar(array + "/Td", new String[] {"9", "10", "11"}, 36, 26, LEFT, false, true);
    symbols.bipolar(array + "/Te", new String[] {"12", "13", "14"}, 51, 27, LEFT, false, true);
    number("8", 43.3, 23.6, Align.LEFT);
    number("7", 43.3, 28.9, Align.LEFT);
    number("6", 40, 25.7, Align.RIGHT);
    number("9", 36, 25.7, Align.LEFT);
    number("11", 32.6, 24.1, Align.RIGHT);
    number("10", 32.6, 28.6, Align.RIGHT);
    number("14", 48.3, 24.6, Align.LEFT);
    number("12", 51, 26.7, Align.LEFT);
    number("13", 48.3, 30.1, Align.LEFT);
    plan.name(array, 45.1, 26.1, Align.LEFT);
    plan.value("Tc", 45.1, 27, Align.LEFT);
    plan.name(array, 31.9, 26.1, Align.RIGHT);
    plan.value("Td", 31.9, 27, Align.RIGHT);
    plan.name(array, 48.5, 31.7, Align.LEFT);
    plan.value("Te", 48.5, 32.6, Align.LEFT);
    plan.wire(36, 26, 37, 26);
    plan.wire(37, 26, 40, 26);
    plan.joint(37, 26);
    plan.wire(37, 26, 37, 22.5);
    plan.joint(37, 22.5);
    plan.wire(37, 22.5, 48, 22.5, 48, 24.5);
    plan.wire(37, 22.5, 33, 22.5);
    plan.joint(33, 22.5);
    plan.wire(33, 22.5, 33, 23.5);
    symbols.resistor(name("Rn12"), 28, 22.5, RIGHT);
    plan.wire(30.5, 22.5, 33, 22.5);
    plan.wire(25.5, 22.5, 25.5, 23.5);
    symbols.ground(25.5, 23.5);
    emitter("Rn13", 43);
    emitter("Rn14", 33);
    plan.wire(48, 29.5, 48, 36);
    plan.joint(48, 36);
    plan.wire(51, 27, 54, 27);
    plan.wire(54, 27, 60.5, 27);
    plan.joint(54, 27);
    symbols.resistor(name("Rn24"), 54, 31.5, DOWN);
    plan.wire(54, 27, 54, 29);
    plan.wire(54, 34, 54, 36);
    plan.joint(54, 36);
    symbols.resistor(name("Rn23"), 63, 27, LEFT);
  }

  private void emitter(String resistor, double x) {
    symbols.resistor(name(resistor), x, 32, DOWN);
    plan.wire(x, 28.5, x, 29);
    plan.wire(x, 29, x, 29.5);
    plan.wire(x, 34.5, x, 36);
    if (x > 33) {
      plan.joint(x, 36);
    }
  }

  private void differenceAmp() {
    plan.wire(46, 7, 63.5, 7);
    symbols.resistor(name("Rn17"), 66, 7, RIGHT);
    plan.wire(40, 8, 62, 8, 62, 11, 63.5, 11);
    symbols.resistor(name("Rn15"), 66, 11, RIGHT);
    plan.wire(68.5, 7, 69.5, 7);
    plan.wire(69.5, 7, 73, 7);
    plan.joint(69.5, 7);
    plan.wire(69.5, 7, 69.5, 13.5);
    symbols.resistor(name("Rn18"), 69.5, 16, DOWN);
    plan.wire(69.5, 18.5, 69.5, 19.5);
    symbols.ground(69.5, 19.5);
    plan.wire(68.5, 11, 72, 11);
    plan.wire(72, 11, 73, 11);
    plan.joint(72, 11);
    symbols.amplifier(name("Un02"), "X", "1", "2", "3", 74, 9);
    plan.wire(80, 9, 82, 9);
    plan.joint(82, 9);
    symbols.resistor(name("Rn16"), 77, 16, RIGHT);
    plan.wire(72, 11, 72, 16);
    plan.wire(72, 16, 74.5, 16);
    plan.joint(72, 16);
    plan.wire(79.5, 16, 82, 16);
    plan.joint(82, 16);
    plan.wire(82, 9, 82, 16);
    symbols.capacitor(name("Cn03"), 77, 20, RIGHT);
    plan.wire(72, 16, 72, 20, 75.5, 20);
    plan.wire(78.5, 20, 82, 20, 82, 16);
  }

  private void buffer() {
    plan.wire(82, 9, 83.5, 9);
    symbols.capacitor(name("Cn04"), 85, 9, RIGHT);
    plan.wire(86.5, 9, 88, 9);
    plan.wire(88, 9, 90, 9);
    plan.joint(88, 9);
    symbols.resistor(name("Rn19"), 88, 13, DOWN);
    plan.wire(88, 9, 88, 10.5);
    plan.wire(88, 15.5, 88, 17.5);
    symbols.ground(88, 17.5);
    symbols.amplifier(name("Un02"), "Y", "7", "6", "5", 91, 11);
    plan.wire(90, 13, 90, 17, 98.5, 17);
    plan.wire(97, 11, 98.5, 11);
    plan.joint(98.5, 11);
    plan.wire(98.5, 11, 98.5, 17);
    plan.joint(98.5, 17);
    plan.wire(98.5, 11, 100.5, 11);
    symbols.resistor(name("Rn20"), 103, 11, RIGHT);
    plan.wire(105.5, 11, 107, 11);
    symbols.jack(name("Jn02"), "OUT", 109, 11, LEFT);
    plan.wire(107, 13, 107, 14);
    symbols.ground(107, 14);
    String part = name("Un02");
    plan.stroke(Plan.WIRE, 93, 8.6, 93, 7.5);
    plan.stroke(Plan.WIRE, 93, 13.4, 93, 14.5);
    plan.pin(part, "8", new Dot(93, 7.5));
    plan.pin(part, "4", new Dot(93, 14.5));
    number("8", 93.3, 7.7, Align.LEFT);
    number("4", 93.3, 14.7, Align.LEFT);
    plan.wire(93, 1, 93, 7.5);
    plan.joint(93, 1);
    plan.wire(93, 14.5, 93, 36);
    plan.joint(93, 36);
  }

  private void detector() {
    plan.wire(98.5, 17, 98.5, 24, 91.5, 24);
    symbols.resistor(name("Rn21"), 89, 24, LEFT);
    plan.wire(86.5, 24, 85.5, 24);
    symbols.diode(name("Dn01"), 84, 24, LEFT, false);
    plan.wire(82.5, 24, 80, 24, 80, 24.5);
    symbols.bipolar(name("Qn02"), new String[] {"B", "C", "E"}, 83, 27, LEFT, true, false);
    plan.name(name("Qn02"), 78.7, 27.3, Align.RIGHT);
    plan.wire(83, 27, 84.5, 27);
    symbols.net("THR", "THR", 84.5, 27, Align.LEFT);
    plan.wire(80, 29.5, 80, 30, 77, 30);
    plan.wire(77, 30, 73, 30);
    plan.wire(73, 30, 71, 30);
    plan.joint(77, 30);
    plan.joint(73, 30);
    symbols.polarised(name("Cn05"), 77, 33, DOWN);
    plan.wire(77, 30, 77, 31.5);
    plan.wire(77, 34.5, 77, 36);
    plan.joint(77, 36);
    symbols.resistor(name("Rn22"), 73, 33, DOWN);
    plan.wire(73, 30, 73, 30.5);
    plan.wire(73, 35.5, 73, 36);
    plan.joint(73, 36);
    symbols.njfet(name("Qn03"), "D", "S", 71, 30, LEFT);
    plan.name(name("Qn03"), 66.6, 30.4, Align.RIGHT);
    plan.wire(65.5, 27, 68, 27, 68, 27.5);
    plan.wire(68, 32.5, 68, 33.6);
    symbols.ground(68, 33.6);
  }

  /** Channel B alone feeds the gain-reduction meter. */
  private void meter() {
    plan.joint(43, 29);
    plan.wire(43, 29, 41.5, 29);
    symbols.resistor("R225", 39, 29, LEFT);
    plan.wire(36.5, 29, 36.5, 32);
    symbols.net("B_METER", "METER", 36.5, 32, Align.LEFT);
    plan.stroke(Plan.WIRE, 103, 28.5, 106, 28.5, 106, 33.5, 103, 33.5, 103, 28.5);
    plan.body(Mark.Kind.BODY, "J203", 103, 28.5, 106, 28.5, 106, 33.5, 103, 33.5);
    plan.stroke(Plan.WIRE, 102, 30, 104.3, 30);
    plan.stroke(Plan.WIRE, 102, 32, 104.3, 32);
    plan.circle(104.5, 30, 0.2, Plan.THIN);
    plan.circle(104.5, 32, 0.2, Plan.THIN);
    plan.pin("J203", "1", new Dot(102, 30));
    plan.pin("J203", "2", new Dot(102, 32));
    plan.name("J203", 106.5, 30.8, Align.LEFT);
    plan.value("METER", 106.5, 31.7, Align.LEFT);
    plan.wire(102, 30, 100.5, 30);
    symbols.net("B_METER", "METER", 100.5, 30, Align.RIGHT);
    plan.wire(102, 32, 101, 32, 101, 36);
    plan.joint(101, 36);
  }

  private void number(String pin, double x, double y, Align align) {
    plan.text(pin, x, y, 6, align);
  }
}
