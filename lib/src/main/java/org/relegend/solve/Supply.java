package org.relegend.solve;

/**
 * A source of direct voltage between two terminals, the first being the more positive.
 *
 * @param volts without load
 * @param ohms inside, above zero
 */
public record Supply(double volts, double ohms) implements DeviceLaw {
  public Supply {
    if (!Double.isFinite(volts) || !(ohms > 0)) {
      throw new IllegalArgumentException("no supply: %s V, %s ohms".formatted(volts, ohms));
    }
  }

  @Override
  public int terminals() {
    return 2;
  }

  @Override
  public void conduct(double[] v, double[] i, double[] g) {
    Resistance.conduct(1 / ohms, v, i, g);
    i[0] -= volts / ohms;
    i[1] += volts / ohms;
  }

  @Override
  public DeviceLaw withSourcesAt(double fraction) {
    return new Supply(volts * fraction, ohms);
  }
}
