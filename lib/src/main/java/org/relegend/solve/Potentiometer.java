package org.relegend.solve;

import java.util.List;

/**
 * A resistance with a wiper: end, wiper, other end.
 *
 * @param ohms end to end
 * @param position of the wiper: 0 at the first end, 1 at the other
 * @param contact ohms of the wiper itself
 * @param tolerance one standard deviation of healthy pieces, as a fraction
 */
public record Potentiometer(double ohms, double position, double contact, double tolerance)
    implements DeviceLaw {
  /** What is left of the track at its ends. */
  private static final double END_OHMS = 1;

  public Potentiometer {
    if (!(ohms > 0) || !(position >= 0 && position <= 1) || !(contact > 0)) {
      throw new IllegalArgumentException(
          "no potentiometer: %s ohms, wiper at %s".formatted(ohms, position));
    }
  }

  @Override
  public int terminals() {
    return 3;
  }

  /** Two parts of the track and the wiper meet in a point inside, which is worked out here. */
  @Override
  public void conduct(double[] v, double[] i, double[] g) {
    double[] arm = {
      1 / (ohms * position + END_OHMS), 1 / contact, 1 / (ohms * (1 - position) + END_OHMS)
    };
    double sum = arm[0] + arm[1] + arm[2];
    for (int k = 0; k < 3; k++) {
      i[k] = 0;
      for (int m = 0; m < 3; m++) {
        g[k * 3 + m] = (k == m ? arm[k] : 0) - arm[k] * arm[m] / sum;
      }
      for (int m = 0; m < 3; m++) {
        // by differences, so that a track at a high voltage loses no digits
        i[k] += k == m ? 0 : g[k * 3 + m] * (v[m] - v[k]);
      }
    }
  }

  @Override
  public List<DeviceLaw> spread() {
    return tolerance == 0
        ? List.of()
        : List.of(new Potentiometer(ohms / (1 + tolerance), position, contact, tolerance));
  }
}
