package org.relegend.bench.entry;

import java.util.Locale;
import org.relegend.map.BoardMap;
import org.relegend.map.NameRules;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

/**
 * Voltages that can hardly be meant: a slip of the key, or ohms typed at a node. What is far above
 * all that the map tells is asked for with its unit; what is beyond any of it is refused.
 *
 * @param bare the most that is taken without a unit, in volts
 * @param most the most that is taken at all, in volts
 */
record VoltageBounds(double bare, double most) {
  /** Readings may be larger than all that the map tells, which is half-made, but not by more. */
  private static final double TIMES = 10;

  /** What is taken without a unit even where the map tells only small voltages. */
  private static final double PLAIN = 100;

  private static final double MOST = 1000;

  /** As the nets of a map tell. */
  static VoltageBounds of(BoardMap map) {
    double known =
        map.nets().stream().mapToDouble(net -> Math.abs(net.potential().volts())).max().orElse(0);
    double most = Math.max(MOST, TIMES * known);
    return new VoltageBounds(known == 0 ? most : Math.max(PLAIN, TIMES * known), most);
  }

  /**
   * Passes what can be.
   *
   * @param typed as it was typed
   * @param isBare whether without a unit
   * @throws IllegalArgumentException with what to do, where it is a voltage and too large
   */
  void check(Amount amount, String typed, boolean isBare) {
    double volts = Math.abs(amount.value());
    if (amount.quantity() != Quantity.VOLTAGE || volts <= (isBare ? bare : most)) {
      return;
    }
    String text = "\"%s\" would be %s".formatted(NameRules.printable(typed.strip()), amount.text());
    if (volts <= most) {
      throw new IllegalArgumentException(
          "%s, far above what the map tells: type it with its unit if it is so, or with ohm if it is a resistance"
              .formatted(text));
    }
    throw new IllegalArgumentException(
        String.format(
            Locale.ROOT,
            "%s, and this map knows nothing near that (readings up to %.0f V are taken): for a resistance type ohm;"
                + " if it is so, first tell the map the voltage of that node",
            text,
            most));
  }
}
