package org.relegend.bench.rule;

import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

/**
 * The voltage of a net against the reference.
 *
 * @param value in volts
 * @param read false where a supply rail that nobody read is taken to be as the map says
 */
public record NetVoltage(double value, boolean read) {
  /**
   * What two readings of one meter may be off by: half a per cent and 5 mV (common practice for
   * bench meters, larger than most).
   */
  public double uncertainty() {
    return 0.005 * Math.abs(value) + 0.005;
  }

  public String text() {
    return text(value);
  }

  /** For people, with three figures: "5.36 V", "101 mV". */
  public static String text(double volts) {
    return Math.abs(volts) < 5e-5 ? "0 V" : new Amount(Quantity.VOLTAGE, volts).text(4);
  }

  static String amps(double amps) {
    return new Amount(Quantity.CURRENT, Math.abs(amps)).text(2);
  }

  /** For people, with two figures: "33 kΩ". */
  public static String resistance(double ohms) {
    return ohms(ohms);
  }

  static String ohms(double ohms) {
    return new Amount(Quantity.RESISTANCE, ohms).text(2);
  }
}
