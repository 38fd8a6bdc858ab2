package org.relegend.solve;

/**
 * A capacitor: to direct current its leak.
 *
 * @param farads at alternating current
 * @param leakOhms parallel resistance
 */
public record Capacitance(double farads, double leakOhms) implements DeviceLaw {
  public Capacitance {
    if (!(farads >= 0 && farads < 1e3) || !(leakOhms > 0)) {
      throw new IllegalArgumentException(
          "no capacitor: %s F, leak %s ohms".formatted(farads, leakOhms));
    }
  }

  @Override
  public int terminals() {
    return 2;
  }

  @Override
  public void conduct(double[] v, double[] i, double[] g) {
    Resistance.conduct(1 / leakOhms, v, i, g);
  }

  @Override
  public void react(double omega, double[] g, double[] b) {
    Resistance.slopes(omega * farads, b);
  }
}
