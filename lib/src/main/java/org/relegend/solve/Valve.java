package org.relegend.solve;

import java.util.List;
import org.hipparchus.analysis.differentiation.Gradient;

/**
 * A triode or pentode: anode, grid, cathode, and for a pentode the screen grid as fourth terminal;
 * the suppressor is taken to be at the cathode. Koren, "Improved vacuum tube models for SPICE
 * simulations", Glass Audio 8/5, 1996: E1 = Es/kp ln(1 + exp(kp (1/mu + Vgk / sqrt(kvb + Es²)))),
 * where Es is the anode's voltage for a triode; Ia = 2 E1^x / kg1. For a pentode Es is the screen's
 * voltage, without kvb under the root but with Ia times atan(Va / kvb), and the screen takes
 * (Vg2/mu + Vgk)^1.5 / kg2. A positive grid draws (Vgk - 0.2 V)^1.5 / kgrid.
 *
 * @param pentode whether there is a screen grid
 * @param mu amplification
 * @param exponent x
 * @param kg1 current divisor of the anode
 * @param kg2 current divisor of the screen; of no use in a triode
 * @param kp steepness near cut-off
 * @param kvb the knee: volts squared for a triode, volts for a pentode
 * @param emissionSpread standard deviation of the logarithm of the current
 */
public record Valve(
    boolean pentode,
    double mu,
    double exponent,
    double kg1,
    double kg2,
    double kp,
    double kvb,
    double emissionSpread)
    implements SmoothLaw {
  private static final double GRID_DIVISOR = 2000;
  private static final double LONGEST_GRID_STEP = 4;

  public Valve {
    if (!(mu > 0) || !(exponent > 0) || !(kg1 > 0) || !(kg2 > 0) || !(kp > 0) || !(kvb > 0)) {
      throw new IllegalArgumentException("no valve: mu %s, kg1 %s".formatted(mu, kg1));
    }
  }

  @Override
  public int terminals() {
    return pentode ? 4 : 3;
  }

  @Override
  public Gradient[] currents(Gradient[] v) {
    Gradient anode = SmoothLaw.softPlus(v[0].subtract(v[2]));
    Gradient grid = v[1].subtract(v[2]);
    Gradient gridCurrent =
        SmoothLaw.positive(grid.subtract(0.2), 0.01).pow(1.5).divide(GRID_DIVISOR);
    if (!pentode) {
      Gradient root = anode.multiply(anode).add(kvb).sqrt();
      Gradient current = space(anode, grid.divide(root));
      return new Gradient[] {current, gridCurrent, current.add(gridCurrent).negate()};
    }
    Gradient screen = SmoothLaw.positive(v[3].subtract(v[2]), 0.1);
    Gradient current = space(screen, grid.divide(screen)).multiply(anode.divide(kvb).atan());
    Gradient taken = SmoothLaw.positive(screen.divide(mu).add(grid), 0.01).pow(1.5).divide(kg2);
    return new Gradient[] {
      current, gridCurrent, current.add(gridCurrent).add(taken).negate(), taken
    };
  }

  private Gradient space(Gradient field, Gradient control) {
    Gradient steep = SmoothLaw.softPlus(control.add(1 / mu).multiply(kp));
    return field.multiply(steep).divide(kp).pow(exponent).multiply(2 / kg1);
  }

  @Override
  public boolean limit(double[] from, double[] to) {
    double old = from[1] - from[2];
    double next = to[1] - to[2];
    double limited = Math.max(old - LONGEST_GRID_STEP, Math.min(old + LONGEST_GRID_STEP, next));
    to[1] = to[2] + limited;
    return limited != next;
  }

  /** The same with its emission at a fraction. */
  public Valve withEmission(double fraction) {
    return new Valve(
        pentode, mu, exponent, kg1 / fraction, kg2 / fraction, kp, kvb, emissionSpread);
  }

  @Override
  public List<DeviceLaw> spread() {
    return List.of(withEmission(Math.exp(emissionSpread)));
  }
}
