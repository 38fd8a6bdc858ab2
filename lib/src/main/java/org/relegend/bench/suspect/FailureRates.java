package org.relegend.bench.suspect;

import java.util.List;
import java.util.Locale;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Kind;
import org.relegend.map.Part;

/**
 * How often kinds of parts fail, relative to one another: failures per million hours of
 * MIL-HDBK-217F, parts count, ground fixed, before the quality factor. What that table lacks is
 * assumed, and says so.
 */
public final class FailureRates {
  /** Where the figures are from. */
  public static final String SOURCE = "MIL-HDBK-217F, Appendix A, ground fixed";

  /** One kind's rate. */
  public record Rate(String name, double perMillionHours, boolean published) {}

  private record Row(String family, String words, Rate rate) {}

  private static final List<Row> TABLE =
      List.of(
          row("resistor", "composition", "composition resistor", 0.0022),
          row("resistor", "wirewound", "wirewound resistor", 0.018),
          row("resistor", "pot|preset|trimmer", "non-wirewound potentiometer", 0.15),
          row("resistor", "", "film resistor", 0.0027),
          row("capacitor", "tantalum|bead", "solid tantalum capacitor", 0.0039),
          row("capacitor", "ceramic|disc", "ceramic capacitor", 0.0074),
          row("capacitor", "mica", "mica capacitor", 0.0015),
          row(
              "capacitor",
              "cap-pol|electrolytic|cap-bipolar|cap-multi",
              "aluminium capacitor",
              0.061),
          row("capacitor", "", "paper or film capacitor", 0.0042),
          row("diode", "zener", "regulator diode", 0.024),
          row("diode", "small.signal|switching", "switching diode", 0.0075),
          row("diode", "", "general diode", 0.028),
          row("rectifier", "", "general diode", 0.028),
          row("transistor", "jfet|mos", "field-effect transistor", 0.099),
          row("transistor", "array", "linear circuit of few transistors", 0.024),
          row("transistor", "power", "power transistor", 0.042),
          row("transistor", "", "bipolar transistor", 0.0011),
          row("opamp", "quad", "linear circuit of many transistors", 0.041),
          row("opamp", "", "linear circuit of few transistors", 0.024),
          row("comparator", "", "linear circuit of few transistors", 0.024),
          row("regulator", "", "linear circuit of few transistors", 0.024),
          row("amplifier", "", "linear circuit of many transistors", 0.041),
          row("timer", "", "linear circuit of few transistors", 0.024),
          row("switch", "rotary", "rotary switch", 0.99),
          row("switch", "", "switch", 0.0030),
          row("relay", "", "relay", 0.28),
          row("fuse", "", "fuse", 0.020),
          row("crystal", "", "crystal", 0.096));

  /** For what the table hasn't got: of the order of its middle. */
  private static final Rate ASSUMED = new Rate("part that the table hasn't got", 0.01, false);

  private static final Rate CONNECTOR = new Rate("connector", 0.003, false);

  private FailureRates() {}

  private static Row row(String family, String words, String name, double rate) {
    return new Row(family, words, new Rate(name, rate, true));
  }

  /** The rate of a part, by its kind and the words of its value. */
  public static Rate of(Circuit circuit, Part part) {
    String family = circuit.kindOf(part.id()).map(Kind::family).orElse("");
    String words =
        (part.kind()
                + " "
                + circuit.kindOf(part.id()).map(Kind::name).orElse("")
                + " "
                + part.value())
            .toLowerCase(Locale.ROOT);
    for (Row row : TABLE) {
      boolean fits = row.words().isEmpty() || words.matches(".*(" + row.words() + ").*");
      if (row.family().equals(family) && fits) {
        return row.rate();
      }
    }
    return family.equals("connector") ? CONNECTOR : ASSUMED;
  }
}
