package org.relegend.solve;

import java.util.List;

/**
 * A diode, zener or light-emitting diode: anode, cathode. Shockley's law, I = Is (exp(V / n Vt) -
 * 1), and below the breakdown voltage I = -Ibv exp(-(V + BV) / m Vt).
 *
 * @param saturation Is in amperes
 * @param emission n
 * @param breakdown BV in volts, positive; infinite where it matters to nobody
 * @param breakdownAmperes Ibv: the current at which BV holds
 * @param breakdownEmission m: sets the dynamic resistance, which at Ibv is m Vt / Ibv
 * @param voltSpread standard deviation of the forward voltage, in volts
 * @param breakdownSpread standard deviation of BV, as a fraction
 */
public record Junction(
    double saturation,
    double emission,
    double breakdown,
    double breakdownAmperes,
    double breakdownEmission,
    double voltSpread,
    double breakdownSpread)
    implements DeviceLaw {
  /** Parallel to every junction, as simulators have it. */
  static final double LEAST_SIEMENS = 1e-12;

  public Junction {
    if (!(saturation > 0) || !(emission > 0) || !(breakdown > 0) || !(breakdownAmperes > 0)) {
      throw new IllegalArgumentException(
          "no junction: Is %s A, n %s, BV %s V".formatted(saturation, emission, breakdown));
    }
  }

  /** A diode that never breaks down. */
  public static Junction diode(double saturation, double emission) {
    return new Junction(saturation, emission, Double.POSITIVE_INFINITY, 1e-3, 1, 0.01, 0);
  }

  /** The same with another breakdown. */
  public Junction breakingAt(double volts, double amperes, double ohms, double tolerance) {
    double m = ohms * amperes / Exponential.THERMAL_VOLTS;
    return new Junction(
        saturation, emission, volts, amperes, Math.max(m, 0.5), voltSpread, tolerance);
  }

  private double thermal() {
    return emission * Exponential.THERMAL_VOLTS;
  }

  private double breakdownThermal() {
    return breakdownEmission * Exponential.THERMAL_VOLTS;
  }

  @Override
  public int terminals() {
    return 2;
  }

  @Override
  public void conduct(double[] v, double[] i, double[] g) {
    double volts = v[0] - v[1];
    double x = volts / thermal();
    double current = saturation * (Exponential.value(x) - 1) + LEAST_SIEMENS * volts;
    double slope = saturation / thermal() * Exponential.slope(x) + LEAST_SIEMENS;
    if (Double.isFinite(breakdown)) {
      double y = -(volts + breakdown) / breakdownThermal();
      current -= breakdownAmperes * Exponential.value(y);
      slope += breakdownAmperes / breakdownThermal() * Exponential.slope(y);
    }
    i[0] = current;
    i[1] = -current;
    Resistance.slopes(slope, g);
  }

  @Override
  public boolean limit(double[] from, double[] to) {
    double old = from[0] - from[1];
    double next = to[0] - to[1];
    double limited = Exponential.limited(old, next, thermal(), saturation);
    if (Double.isFinite(breakdown) && next < 0) {
      double beyond =
          Exponential.limited(
              -(old + breakdown), -(next + breakdown), breakdownThermal(), breakdownAmperes);
      limited = -beyond - breakdown;
    }
    if (Math.abs(limited - next) <= 1e-12) {
      return false;
    }
    to[0] = to[1] + limited;
    return true;
  }

  @Override
  public List<DeviceLaw> spread() {
    double scale = Math.exp(-voltSpread / thermal());
    Junction forward =
        new Junction(
            saturation * scale,
            emission,
            breakdown,
            breakdownAmperes,
            breakdownEmission,
            voltSpread,
            breakdownSpread);
    if (!Double.isFinite(breakdown) || breakdownSpread == 0) {
      return List.of(forward);
    }
    return List.of(
        forward,
        new Junction(
            saturation,
            emission,
            breakdown * (1 + breakdownSpread),
            breakdownAmperes,
            breakdownEmission,
            voltSpread,
            breakdownSpread));
  }
}
