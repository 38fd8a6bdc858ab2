package org.relegend.solve;

import java.util.List;
import org.hipparchus.analysis.differentiation.Gradient;

/**
 * A series regulator: input, common or adjust, output. It only gives current, up to its limit, and
 * holds the output so far above the common as the input allows.
 *
 * @param polarity 1 for positive voltages, -1 for negative
 * @param volts between output and common: 1.25 for the usual adjustable ones
 * @param dropout least voltage between input and output, in volts
 * @param outputOhms how it gives way under load
 * @param limit of the current, in amperes
 * @param quiescent current out of the common, in amperes
 * @param tolerance one standard deviation of the voltage, as a fraction
 */
public record LinearRegulator(
    int polarity,
    double volts,
    double dropout,
    double outputOhms,
    double limit,
    double quiescent,
    double tolerance)
    implements SmoothLaw {
  /** What its inner divider draws from the output, as a share of the quiescent current. */
  private static final double DIVIDER = 0.01;

  public LinearRegulator {
    if (Math.abs(polarity) != 1 || !(volts > 0) || !(outputOhms > 0) || !(limit > 0)) {
      throw new IllegalArgumentException("no regulator: %s V".formatted(volts));
    }
  }

  @Override
  public int terminals() {
    return 3;
  }

  @Override
  public Gradient[] currents(Gradient[] v) {
    Gradient input = v[0].subtract(v[1]).multiply(polarity);
    Gradient output = v[2].subtract(v[1]).multiply(polarity);
    Gradient aim = SmoothLaw.smaller(input.subtract(dropout), input.newInstance(volts), 0.01);
    Gradient free = SmoothLaw.positive(aim.subtract(output).divide(outputOhms), 1e-4);
    Gradient given = SmoothLaw.saturated(free.divide(limit)).multiply(limit);
    Gradient rest = SmoothLaw.saturated(input).multiply(quiescent);
    Gradient divider = output.multiply(DIVIDER * quiescent / volts);
    return new Gradient[] {
      given.add(rest).multiply(polarity),
      rest.add(divider).multiply(-polarity),
      given.subtract(divider).multiply(-polarity)
    };
  }

  @Override
  public List<DeviceLaw> spread() {
    return List.of(
        new LinearRegulator(
            polarity, volts * (1 + tolerance), dropout, outputOhms, limit, quiescent, tolerance));
  }
}
