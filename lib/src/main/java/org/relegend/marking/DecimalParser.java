package org.relegend.marking;

import java.math.BigDecimal;

/** Decimal digits to the nearest double, so that 4.7 µ read from text equals the literal 4.7e-6. */
final class DecimalParser {
  private static final double[] POWERS = powers();

  private DecimalParser() {}

  /** digits times ten to the exponent; digits has at most 15 figures. */
  static double value(long digits, int exponent) {
    int size = Math.abs(exponent);
    if (size < POWERS.length) {
      // both factors are exact doubles, so the one rounding of the operation is the right one
      return exponent < 0 ? digits / POWERS[size] : digits * POWERS[size];
    }
    return BigDecimal.valueOf(digits, -exponent).doubleValue();
  }

  private static double[] powers() {
    double[] powers = new double[23];
    powers[0] = 1;
    for (int i = 1; i < powers.length; i++) {
      powers[i] = powers[i - 1] * 10; // exact up to 10^22
    }
    return powers;
  }
}
