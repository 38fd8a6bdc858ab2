package org.relegend.solve;

/**
 * The exponential law of junctions and how far Newton's method may step along it.
 *
 * @see <a href="https://ngspice.sourceforge.io/docs.html">limiting as Nagel's SPICE2 (ERL-M520,
 *     1975) does</a>
 */
final class Exponential {
  /** Boltzmann's constant times 300.15 K over the elementary charge (CODATA 2018): 27 °C. */
  static final double THERMAL_VOLTS = 1.380649e-23 * 300.15 / 1.602176634e-19;

  /** Beyond this the exponential goes on as its tangent, so that no step can overflow. */
  private static final double LONGEST = 200;

  private Exponential() {}

  static double value(double x) {
    return x < LONGEST ? Math.exp(x) : Math.exp(LONGEST) * (1 + x - LONGEST);
  }

  static double slope(double x) {
    return Math.exp(Math.min(x, LONGEST));
  }

  /**
   * The voltage to go on with where a step goes from one to another: logarithmic where the
   * exponential is steep.
   *
   * @param thermal n kT/q in volts
   * @param saturation saturation current in amperes
   */
  static double limited(double from, double to, double thermal, double saturation) {
    double critical = thermal * Math.log(thermal / (Math.sqrt(2) * saturation));
    if (to <= critical || Math.abs(to - from) <= 2 * thermal) {
      return to;
    }
    if (from <= 0) {
      return thermal * Math.log(to / thermal);
    }
    double ratio = 1 + (to - from) / thermal;
    return ratio > 0 ? from + thermal * Math.log(ratio) : critical;
  }
}
