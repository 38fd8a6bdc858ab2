package org.relegend.bench;

import org.relegend.map.Keyed;
import org.relegend.map.Subject;

/**
 * How far a node may lie from its twin or its nominal voltage: the larger of the two.
 *
 * @param fraction of the voltage: 0.05 is 5 %
 * @param volts in any case: a node of millivolts needs a limit of millivolts
 */
public record NodeLimit(Subject at, double fraction, double volts) implements Keyed<Subject> {
  /** 5 % of a regulated or compared voltage. */
  public static final double USUAL_FRACTION = 0.05;

  /** 50 mV: what two good channels may differ by with five per cent parts. */
  public static final double USUAL_VOLTS = 0.05;

  public NodeLimit {
    if (!(fraction >= 0 && fraction <= 1) || !(volts >= 0 && volts <= 1e6)) {
      throw new IllegalArgumentException(
          "a limit of %s and %s V can't be".formatted(fraction, volts));
    }
  }

  public static NodeLimit usual(Subject at) {
    return new NodeLimit(at, USUAL_FRACTION, USUAL_VOLTS);
  }

  @Override
  public Subject key() {
    return at;
  }

  /** The difference allowed at this voltage. */
  public double at(double nominal) {
    return Math.max(fraction * Math.abs(nominal), volts);
  }
}
