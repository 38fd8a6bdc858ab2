package org.relegend.bench.entry;

import java.util.Optional;
import org.relegend.bench.MeasurementSetup;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.NodeName;
import org.relegend.circuit.NodeNameException;
import org.relegend.circuit.NodeNames;
import org.relegend.map.NameRules;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

/**
 * One reading as typed while probing, and behind a semicolon what holds for it alone: {@code 101m};
 * {@code 101m; limit 5 mV}; {@code 4.72k; lifted}; {@code -2.4; against VN}.
 *
 * @param limit for the node from now on, where one was typed
 */
public record TypedLine(Amount amount, MeasurementSetup setting, Optional<TypedSetup.Limit> limit) {
  /** What is measured where no unit is typed: in circuit, and of a part that is out of it. */
  public record Assumed(Quantity inCircuit, Quantity outOfCircuit) {}

  /**
   * Reads such a line.
   *
   * @param usual how readings are taken while nothing else is typed
   * @throws IllegalArgumentException with one sentence where it can't be read
   */
  public static TypedLine parse(
      String text, Assumed assumed, MeasurementSetup usual, Circuit circuit) {
    int end = text.indexOf(';');
    TypedSetup typed = TypedSetup.parse(end < 0 ? "" : text.substring(end + 1), usual.with());
    MeasurementSetup setting = over(usual, typed.setting(), circuit);
    Quantity quantity = setting.lifted() ? assumed.outOfCircuit() : assumed.inCircuit();
    String value = end < 0 ? text : text.substring(0, end);
    Amount amount = TypedReading.parse(value, quantity);
    VoltageBounds.of(circuit.map()).check(amount, value, TypedReading.isBare(value));
    return new TypedLine(amount, setting, typed.limit());
  }

  private static MeasurementSetup over(
      MeasurementSetup usual, MeasurementSetup setup, Circuit circuit) {
    return new MeasurementSetup(
        setup.against().isEmpty() ? usual.against() : net(setup.against(), circuit),
        setup.with(),
        setup.power() == MeasurementSetup.Power.UNSTATED ? usual.power() : setup.power(),
        setup.lifted() || usual.lifted(),
        setup.words().isEmpty() ? usual.words() : setup.words());
  }

  /**
   * The id of the net that the black lead is on.
   *
   * @throws IllegalArgumentException where the map has no such net
   */
  public static String net(String name, Circuit circuit) {
    try {
      if (new NodeNames(circuit).find(name) instanceof NodeName.OfNet net) {
        return net.net().text();
      }
    } catch (NodeNameException unknown) {
      throw new IllegalArgumentException(noNet(name), unknown);
    }
    throw new IllegalArgumentException(noNet(name));
  }

  private static String noNet(String name) {
    return "the black lead was on \"%s\", and the map has no such net"
        .formatted(NameRules.printable(name));
  }
}
