package org.relegend.solve;

import java.util.List;

/**
 * Ohm's law between two terminals.
 *
 * @param ohms above zero
 * @param tolerance one standard deviation of healthy pieces, as a fraction
 */
public record Resistance(double ohms, double tolerance) implements DeviceLaw {
  public Resistance {
    if (!(ohms > 0 && ohms < 1e18) || !(tolerance >= 0 && tolerance < 1)) {
      throw new IllegalArgumentException("no resistance: " + ohms + " ohms, spread " + tolerance);
    }
  }

  public Resistance(double ohms) {
    this(ohms, 0);
  }

  @Override
  public int terminals() {
    return 2;
  }

  @Override
  public void conduct(double[] v, double[] i, double[] g) {
    conduct(1 / ohms, v, i, g);
  }

  static void conduct(double siemens, double[] v, double[] i, double[] g) {
    i[0] = siemens * (v[0] - v[1]);
    i[1] = -i[0];
    slopes(siemens, g);
  }

  static void slopes(double siemens, double[] g) {
    g[0] = siemens;
    g[1] = -siemens;
    g[2] = -siemens;
    g[3] = siemens;
  }

  @Override
  public List<DeviceLaw> spread() {
    return tolerance == 0 ? List.of() : List.of(new Resistance(ohms / (1 + tolerance), tolerance));
  }
}
