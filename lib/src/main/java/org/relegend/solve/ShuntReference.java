package org.relegend.solve;

import java.util.List;
import org.hipparchus.analysis.differentiation.Gradient;

/**
 * An adjustable shunt reference: reference, anode, cathode. The cathode draws current as soon as
 * the reference lies so many volts above the anode.
 *
 * @param volts the reference voltage
 * @param siemens transconductance
 * @param bias current into the reference, in amperes
 * @param tolerance one standard deviation of the voltage, as a fraction
 */
public record ShuntReference(double volts, double siemens, double bias, double tolerance)
    implements SmoothLaw {
  /** Below this the cathode can't go far: it saturates. */
  private static final double KNEE = 0.5;

  /** Most current of the cathode, in amperes. */
  private static final double LIMIT = 0.15;

  public ShuntReference {
    if (!(volts > 0) || !(siemens > 0)) {
      throw new IllegalArgumentException("no reference: %s V".formatted(volts));
    }
  }

  @Override
  public int terminals() {
    return 3;
  }

  @Override
  public Gradient[] currents(Gradient[] v) {
    Gradient over = SmoothLaw.positive(v[0].subtract(v[1]).subtract(volts), 1e-4);
    Gradient across = SmoothLaw.softPlus(v[2].subtract(v[1]).divide(KNEE / 10)).divide(10);
    Gradient wanted = SmoothLaw.saturated(over.multiply(siemens / LIMIT)).multiply(LIMIT);
    Gradient drawn = wanted.multiply(SmoothLaw.saturated(across));
    Gradient input = SmoothLaw.saturated(v[0].subtract(v[1])).multiply(bias);
    return new Gradient[] {input, input.negate().subtract(drawn), drawn};
  }

  @Override
  public List<DeviceLaw> spread() {
    return List.of(new ShuntReference(volts * (1 + tolerance), siemens, bias, tolerance));
  }
}
