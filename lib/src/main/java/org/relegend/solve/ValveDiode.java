package org.relegend.solve;

import org.hipparchus.analysis.differentiation.Gradient;

/**
 * A rectifying valve: anode, cathode. Child's law, I = P V^1.5.
 *
 * @param perveance P in amperes per volt to the power of 1.5
 */
public record ValveDiode(double perveance) implements SmoothLaw {
  public ValveDiode {
    if (!(perveance > 0)) {
      throw new IllegalArgumentException("no valve: perveance " + perveance);
    }
  }

  @Override
  public int terminals() {
    return 2;
  }

  @Override
  public Gradient[] currents(Gradient[] v) {
    Gradient current = SmoothLaw.positive(v[0].subtract(v[1]), 0.01).pow(1.5).multiply(perveance);
    return new Gradient[] {current, current.negate()};
  }
}
