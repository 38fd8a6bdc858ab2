package org.relegend.marking;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;

/**
 * How far a part may lie from its nominal value.
 *
 * @param low the lower limit, negative or zero: a fraction (-0.05 is 5 % below) or, when absolute,
 *     in the unit of the value (farads)
 * @param high the upper limit, positive or zero, likewise
 */
public record Tolerance(double low, double high, Basis basis) {
  /** What the limits are told in. */
  public enum Basis {
    FRACTION,
    ABSOLUTE
  }

  public Tolerance {
    requireNonNull(basis);
    if (!Double.isFinite(low) || !Double.isFinite(high) || low > 0 || high < 0) {
      throw new IllegalArgumentException(
          "a tolerance runs from below to above: " + low + ", " + high);
    }
    low = low + 0.0;
  }

  /** The same fraction to both sides: 0.05 is ±5 %. */
  public static Tolerance fraction(double each) {
    return new Tolerance(-each, each, Basis.FRACTION);
  }

  /** The same amount to both sides, in the unit of the value. */
  public static Tolerance absolute(double each) {
    return new Tolerance(-each, each, Basis.ABSOLUTE);
  }

  /** The least value that a part of this nominal value may have. */
  public double lowest(double nominal) {
    return basis == Basis.ABSOLUTE ? nominal + low : nominal * (1 + low);
  }

  /** The greatest value that a part of this nominal value may have. */
  public double highest(double nominal) {
    return basis == Basis.ABSOLUTE ? nominal + high : nominal * (1 + high);
  }

  /** For people: "±5 %", "-20 +80 %", "±0.25 pF" (absolute limits are those of capacitors). */
  public String text() {
    double scale = basis == Basis.ABSOLUTE ? 1e12 : 100;
    String unit = basis == Basis.ABSOLUTE ? " pF" : " %";
    String above = plain(high * scale);
    String below = plain(-low * scale);
    return above.equals(below) ? "±" + above + unit : "-" + below + " +" + above + unit;
  }

  private static String plain(double value) {
    BigDecimal rounded = BigDecimal.valueOf(Math.round(value * 1e6), 6);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
