package org.relegend.bench.suspect;

import java.util.EnumMap;
import java.util.Map;
import org.relegend.solve.FailureMode;

/**
 * How a kind's failures divide into modes. Orders of size after MIL-HDBK-338B, table 7.6-1, rounded
 * and from memory; modes that the table hasn't got (a wrong value fitted, a dry joint) are assumed.
 */
final class FailureShares {
  private static final Map<String, Map<FailureMode, Double>> TABLE =
      Map.of(
          "resistor", shares(0.55, 0.05, 0.05, 0.25, 0.06),
          "capacitor", shares(0.30, 0.35, 0.35, 0.05, 0.05),
          "diode", shares(0.35, 0.40, 0.25, 0.05, 0.05),
          "transistor", shares(0.30, 0.50, 0.10, 0.05, 0.10),
          "valve", shares(0.30, 0.15, 0.15, 0.05, 0.35),
          "opamp", shares(0.35, 0.15, 0.10, 0.05, 0.10));

  private static final Map<FailureMode, Double> OTHERS = shares(0.4, 0.3, 0.1, 0.1, 0.1);

  private static final double STUCK = 0.3;
  private static final double JOINT = 0.1;
  private static final double WRONG_VALUE = 0.04;

  private FailureShares() {}

  private static Map<FailureMode, Double> shares(
      double open, double shorted, double leak, double high, double low) {
    Map<FailureMode, Double> shares = new EnumMap<>(FailureMode.class);
    shares.put(FailureMode.OPEN, open);
    shares.put(FailureMode.SHORT, shorted);
    shares.put(FailureMode.LEAK, leak);
    shares.put(FailureMode.HIGH, high);
    shares.put(FailureMode.LOW, low);
    shares.put(FailureMode.STUCK, STUCK);
    shares.put(FailureMode.JOINT, JOINT);
    shares.put(FailureMode.WRONG_VALUE, WRONG_VALUE);
    return Map.copyOf(shares);
  }

  /** The share of a mode among the failures of a family, 0 to 1; they need not add up to 1. */
  static double of(String family, FailureMode mode) {
    return TABLE.getOrDefault(family, OTHERS).getOrDefault(mode, WRONG_VALUE);
  }
}
