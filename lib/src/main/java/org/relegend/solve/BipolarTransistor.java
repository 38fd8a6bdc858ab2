package org.relegend.solve;

import java.util.List;

/**
 * A bipolar transistor: collector, base, emitter. The transport form of Ebers and Moll with Early's
 * effect (Gummel and Poon, Bell System Technical Journal 49, 1970, without high currents).
 *
 * @param polarity 1 for npn, -1 for pnp
 * @param saturation Is in amperes
 * @param forwardGain beta
 * @param reverseGain beta the other way round
 * @param earlyVolts VA; may be infinite
 * @param voltSpread standard deviation of the base-emitter voltage, in volts
 * @param gainSpread standard deviation of the logarithm of beta
 */
public record BipolarTransistor(
    int polarity,
    double saturation,
    double forwardGain,
    double reverseGain,
    double earlyVolts,
    double voltSpread,
    double gainSpread)
    implements DeviceLaw {
  public BipolarTransistor {
    boolean positive = saturation > 0 && forwardGain > 0 && reverseGain > 0 && earlyVolts > 0;
    if (Math.abs(polarity) != 1 || !positive) {
      throw new IllegalArgumentException(
          "no transistor: polarity %d, Is %s A, beta %s, VA %s"
              .formatted(polarity, saturation, forwardGain, earlyVolts));
    }
  }

  @Override
  public int terminals() {
    return 3;
  }

  @Override
  public void conduct(double[] v, double[] i, double[] g) {
    double vt = Exponential.THERMAL_VOLTS;
    double be = polarity * (v[1] - v[2]);
    double bc = polarity * (v[1] - v[0]);
    double forward = saturation * (Exponential.value(be / vt) - 1) + Junction.LEAST_SIEMENS * be;
    double forwardSlope = saturation / vt * Exponential.slope(be / vt) + Junction.LEAST_SIEMENS;
    double reverse = saturation * (Exponential.value(bc / vt) - 1) + Junction.LEAST_SIEMENS * bc;
    double reverseSlope = saturation / vt * Exponential.slope(bc / vt) + Junction.LEAST_SIEMENS;
    // 1 / qb; it can't turn the current round, however far a step of Newton's method goes
    double early = Math.max(1 - bc / earlyVolts, 0.01);
    double earlySlope = early > 0.01 ? -1 / earlyVolts : 0;
    double base = forward / forwardGain + reverse / reverseGain;
    double baseBe = forwardSlope / forwardGain;
    double baseBc = reverseSlope / reverseGain;
    double collector = (forward - reverse) * early - reverse / reverseGain;
    double collectorBe = forwardSlope * early;
    double collectorBc =
        -reverseSlope * early + (forward - reverse) * earlySlope - reverseSlope / reverseGain;
    i[0] = polarity * collector;
    i[1] = polarity * base;
    i[2] = -i[0] - i[1];
    row(g, 0, collectorBe, collectorBc);
    row(g, 3, baseBe, baseBc);
    row(g, 6, -collectorBe - baseBe, -collectorBc - baseBc);
  }

  private static void row(double[] g, int at, double be, double bc) {
    g[at] = -bc;
    g[at + 1] = be + bc;
    g[at + 2] = -be;
  }

  @Override
  public boolean limit(double[] from, double[] to) {
    double vt = Exponential.THERMAL_VOLTS;
    double be = polarity * (to[1] - to[2]);
    double bc = polarity * (to[1] - to[0]);
    double limitedBe = Exponential.limited(polarity * (from[1] - from[2]), be, vt, saturation);
    double limitedBc = Exponential.limited(polarity * (from[1] - from[0]), bc, vt, saturation);
    to[2] = to[1] - polarity * limitedBe;
    to[0] = to[1] - polarity * limitedBc;
    return limitedBe != be || limitedBc != bc;
  }

  /** The same with another beta. */
  public BipolarTransistor withGain(double beta) {
    return new BipolarTransistor(
        polarity, saturation, beta, reverseGain, earlyVolts, voltSpread, gainSpread);
  }

  @Override
  public List<DeviceLaw> spread() {
    double scale = Math.exp(-voltSpread / Exponential.THERMAL_VOLTS);
    return List.of(
        withGain(forwardGain * Math.exp(gainSpread)),
        new BipolarTransistor(
            polarity,
            saturation * scale,
            forwardGain,
            reverseGain,
            earlyVolts,
            voltSpread,
            gainSpread));
  }
}
