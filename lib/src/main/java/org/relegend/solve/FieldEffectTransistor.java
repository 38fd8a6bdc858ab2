package org.relegend.solve;

import java.util.List;

/**
 * A field-effect transistor: drain, gate, source. The square law of Shichman and Hodges (IEEE
 * Journal of Solid-State Circuits 3, 1968): I = beta (Vgs - Vto)² (1 + lambda Vds) in saturation.
 *
 * @param polarity 1 for an n-channel, -1 for a p-channel
 * @param insulated whether the gate is insulated; else it has a junction to each end of the channel
 * @param threshold Vto in volts, for an n-channel; negative for a depletion type
 * @param beta amperes per volt squared
 * @param lambda channel-length modulation, per volt
 * @param saturation of the gate's junctions, or of the body diode from source to drain, in amperes
 * @param thresholdSpread standard deviation of Vto, in volts
 * @param betaSpread standard deviation of the logarithm of beta
 */
public record FieldEffectTransistor(
    int polarity,
    boolean insulated,
    double threshold,
    double beta,
    double lambda,
    double saturation,
    double thresholdSpread,
    double betaSpread)
    implements DeviceLaw {
  /** The furthest that a step of Newton's method may move the gate. */
  private static final double LONGEST_STEP = 2;

  public FieldEffectTransistor {
    if (Math.abs(polarity) != 1 || !(beta > 0) || !(lambda >= 0) || !(saturation > 0)) {
      throw new IllegalArgumentException(
          "no transistor: polarity %d, Vto %s V, beta %s".formatted(polarity, threshold, beta));
    }
  }

  @Override
  public int terminals() {
    return 3;
  }

  @Override
  public void conduct(double[] v, double[] i, double[] g) {
    java.util.Arrays.fill(g, 0);
    java.util.Arrays.fill(i, 0);
    boolean turned = polarity * (v[0] - v[2]) < 0;
    channel(v, i, g, turned ? 2 : 0, turned ? 0 : 2);
    if (insulated) {
      junction(v, i, g, 2, 0);
    } else {
      junction(v, i, g, 1, 0);
      junction(v, i, g, 1, 2);
    }
  }

  private void channel(double[] v, double[] i, double[] g, int drain, int source) {
    double ds = polarity * (v[drain] - v[source]);
    double over = polarity * (v[1] - v[source]) - threshold;
    if (over <= 0) {
      return;
    }
    // beta is that of the whole square law; as for MOS transistors it counts half
    double k = insulated ? beta / 2 : beta;
    double along = 1 + lambda * ds;
    boolean saturated = ds >= over;
    double current = k * (saturated ? over * over : ds * (2 * over - ds));
    double byGate = k * along * 2 * (saturated ? over : ds);
    double byDrain = (saturated ? 0 : k * along * 2 * (over - ds)) + current * lambda;
    i[drain] += polarity * current * along;
    i[source] -= polarity * current * along;
    add(g, drain, byGate, byDrain, drain, source, 1);
    add(g, source, byGate, byDrain, drain, source, -1);
  }

  private static void add(
      double[] g, int row, double byGate, double byDrain, int drain, int source, int sign) {
    g[row * 3 + 1] += sign * byGate;
    g[row * 3 + drain] += sign * byDrain;
    g[row * 3 + source] -= sign * (byGate + byDrain);
  }

  private void junction(double[] v, double[] i, double[] g, int anode, int cathode) {
    double vt = Exponential.THERMAL_VOLTS;
    double volts = polarity * (v[anode] - v[cathode]);
    double current =
        saturation * (Exponential.value(volts / vt) - 1) + Junction.LEAST_SIEMENS * volts;
    double slope = saturation / vt * Exponential.slope(volts / vt) + Junction.LEAST_SIEMENS;
    i[anode] += polarity * current;
    i[cathode] -= polarity * current;
    g[anode * 3 + anode] += slope;
    g[anode * 3 + cathode] -= slope;
    g[cathode * 3 + anode] -= slope;
    g[cathode * 3 + cathode] += slope;
  }

  @Override
  public boolean limit(double[] from, double[] to) {
    double drain = to[0];
    double source = to[2];
    for (int end = 0; end <= 2; end += 2) {
      double old = polarity * (from[1] - from[end]);
      double next = polarity * (to[1] - to[end]);
      if (!insulated) {
        next = Exponential.limited(old, next, Exponential.THERMAL_VOLTS, saturation);
      }
      if (end == 2) {
        next = Math.max(old - LONGEST_STEP, Math.min(old + LONGEST_STEP, next));
      }
      to[end] = to[1] - polarity * next;
    }
    if (insulated) {
      double body =
          Exponential.limited(
              polarity * (from[2] - from[0]),
              polarity * (to[2] - drain),
              Exponential.THERMAL_VOLTS,
              saturation);
      to[0] = to[2] - polarity * body;
    }
    return Math.abs(to[0] - drain) > 1e-12 || Math.abs(to[2] - source) > 1e-12;
  }

  /** The same with another channel. */
  public FieldEffectTransistor with(double volts, double amperesPerSquare) {
    return new FieldEffectTransistor(
        polarity,
        insulated,
        volts,
        amperesPerSquare,
        lambda,
        saturation,
        thresholdSpread,
        betaSpread);
  }

  @Override
  public List<DeviceLaw> spread() {
    return List.of(
        with(threshold + thresholdSpread, beta), with(threshold, beta * Math.exp(betaSpread)));
  }
}
