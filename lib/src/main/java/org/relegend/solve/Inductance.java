package org.relegend.solve;

/**
 * A coil: to direct current its wire.
 *
 * @param henries at alternating current
 * @param ohms of the wire, above zero
 */
public record Inductance(double henries, double ohms) implements DeviceLaw {
  public Inductance {
    if (!(henries >= 0) || !(ohms > 0)) {
      throw new IllegalArgumentException("no coil: %s H, %s ohms".formatted(henries, ohms));
    }
  }

  @Override
  public int terminals() {
    return 2;
  }

  @Override
  public void conduct(double[] v, double[] i, double[] g) {
    Resistance.conduct(1 / ohms, v, i, g);
  }

  /** 1 / (R + jwL). */
  @Override
  public void react(double omega, double[] g, double[] b) {
    double reactance = omega * henries;
    double square = ohms * ohms + reactance * reactance;
    Resistance.slopes(ohms / square, g);
    Resistance.slopes(-reactance / square, b);
  }
}
