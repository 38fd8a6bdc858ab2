package org.relegend.solve;

import org.hipparchus.analysis.differentiation.Gradient;

/**
 * A comparator whose output can only pull down: non-inverting input, inverting input, output,
 * positive supply, negative supply. It pulls to the negative supply while the inverting input is
 * the higher.
 *
 * @param gain steepness of the change, per volt of input
 * @param bias current into each input, in amperes; negative where it flows out
 * @param onOhms of the output while it pulls
 * @param limit of its current, in amperes
 * @param draw current from supply to supply, in amperes
 */
public record OpenCollectorComparator(
    double gain, double bias, double onOhms, double limit, double draw) implements SmoothLaw {
  public OpenCollectorComparator {
    if (!(gain > 0) || !(onOhms > 0) || !(limit > 0)) {
      throw new IllegalArgumentException("no comparator: gain %s".formatted(gain));
    }
  }

  @Override
  public int terminals() {
    return 5;
  }

  @Override
  public Gradient[] currents(Gradient[] v) {
    Gradient input = v[1].subtract(v[0]).multiply(gain);
    Gradient on = SmoothLaw.saturated(input).add(1).multiply(0.5);
    Gradient across = v[2].subtract(v[4]);
    Gradient sunk = SmoothLaw.saturated(across.divide(onOhms * limit)).multiply(limit).multiply(on);
    Gradient rest = SmoothLaw.saturated(v[3].subtract(v[4])).multiply(draw);
    Gradient plus = SmoothLaw.saturated(v[3].subtract(v[0]).multiply(5)).multiply(bias);
    Gradient minus = SmoothLaw.saturated(v[3].subtract(v[1]).multiply(5)).multiply(bias);
    return new Gradient[] {
      plus, minus, sunk, rest.subtract(plus).subtract(minus), rest.negate().subtract(sunk)
    };
  }

  @Override
  public DeviceLaw withGainAtMost(double most) {
    return gain <= most ? this : new OpenCollectorComparator(most, bias, onOhms, limit, draw);
  }
}
