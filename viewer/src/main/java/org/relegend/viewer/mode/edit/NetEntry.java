package org.relegend.viewer.mode.edit;

import java.math.BigDecimal;
import org.relegend.map.Net;
import org.relegend.map.Potential;
import org.relegend.marking.Amount;
import org.relegend.marking.MarkingReadings;
import org.relegend.marking.Quantity;
import org.relegend.marking.TypedAmounts;

/**
 * What the map says of a net, as lines that can be typed.
 *
 * @param nature word for the kind of voltage
 * @param volts the nominal voltage; empty for none
 */
public record NetEntry(String name, String nature, String volts, String channel, String note) {
  public static NetEntry of(Net net) {
    double volts = net.potential().volts();
    String typed = volts == 0 ? "" : BigDecimal.valueOf(volts).stripTrailingZeros().toPlainString();
    return new NetEntry(
        net.name(), net.potential().nature().word(), typed, net.channel(), net.note());
  }

  /**
   * The net as typed; it stays the same one, whatever it is called.
   *
   * @throws IllegalArgumentException with one sentence where something typed can't be
   */
  public Net on(Net before) {
    return before
        .withName(name)
        .withPotential(new Potential(Potential.Nature.of(nature), number()))
        .withChannel(channel)
        .withNote(note);
  }

  private double number() {
    if (volts.isEmpty()) {
      return 0;
    }
    MarkingReadings<Amount> read = TypedAmounts.read(volts, Quantity.VOLTAGE);
    if (read.outcome() != MarkingReadings.Outcome.READ) {
      throw new IllegalArgumentException(read.reason());
    }
    return read.readings().get(0).value();
  }
}
