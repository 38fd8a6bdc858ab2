package org.relegend.hazard;

import java.util.Optional;
import org.relegend.marking.PreferredSeries;

/**
 * A capacitor that discharges through a resistance: V(t) = V0 exp(-t / RC), so t = RC ln(V0 / V),
 * with energy C V0² / 2 and charge C V0 (any physics text; OpenStax College Physics, chapters 19
 * and 21). Real capacitors may hold more and take longer, and some recharge by themselves: every
 * time here is the least to wait, never a reason to touch.
 *
 * @param farads above zero
 * @param volts at the beginning, above or equal zero
 */
public record Discharge(double farads, double volts) {
  /** What a capacitor is discharged to before hands come near (common practice). */
  public static final double LOW_VOLTS = 1;

  /** How long a proposed resistor may take; IEC 61010-1, 6.10.3 and IEC 60204-1 give 5 s too. */
  private static final double PATIENCE = 5;

  /**
   * What a usual film resistor of 0.25 W bears from end to end, whatever its ohms: the limiting
   * element voltage of its data sheet (250 V for most, from memory; common practice).
   */
  public static final double RESISTOR_VOLTS = 250;

  /** The same of types of 0.5 W and more (up to 500 V, from memory; common practice). */
  public static final double MOST_RESISTOR_VOLTS = 500;

  private static final double MOST_OHMS = 100e3;
  private static final double MOST_AMPS = 1;

  public Discharge {
    if (!(farads > 0 && volts >= 0) || !Double.isFinite(farads) || !Double.isFinite(volts)) {
      throw new IllegalArgumentException("no discharge of %s F at %s V".formatted(farads, volts));
    }
  }

  public double joules() {
    return farads * volts * volts / 2;
  }

  public double coulombs() {
    return farads * volts;
  }

  /** RC in seconds. */
  public double timeConstant(double ohms) {
    return ohms * farads;
  }

  /**
   * Seconds until no more than this voltage is left; 0 where there is no more to begin with.
   *
   * @throws IllegalArgumentException unless both are above zero
   */
  public double secondsTo(double lower, double ohms) {
    if (!(lower > 0 && ohms > 0)) {
      throw new IllegalArgumentException("no time to %s V through %s ohm".formatted(lower, ohms));
    }
    return volts <= lower ? 0 : ohms * farads * Math.log(volts / lower);
  }

  /** What a resistor has to bear. */
  public Resistor through(double ohms) {
    return new Resistor(ohms, volts, volts * volts / ohms, joules(), secondsTo(LOW_VOLTS, ohms));
  }

  /** Whether it takes a probe, or a chain of resistors, that is made for its voltage. */
  public boolean needsProbe() {
    return volts > MOST_RESISTOR_VOLTS;
  }

  /**
   * A resistor of the E12 series that brings it below 1 V within 5 seconds, of 100 kilohms at most;
   * of more ohms, and slower, where the first instant would take more than 1 A. None where no usual
   * resistor bears the voltage.
   */
  public Optional<Resistor> proposal() {
    return needsProbe() ? Optional.empty() : Optional.of(proposed());
  }

  private Resistor proposed() {
    double wanted = volts <= LOW_VOLTS ? MOST_OHMS : PATIENCE / (farads * Math.log(volts));
    double ohms = PreferredSeries.E12.around(Math.min(wanted, MOST_OHMS)).below();
    double least = volts / MOST_AMPS;
    return through(ohms < least ? PreferredSeries.E12.around(least).above() : ohms);
  }

  /**
   * A discharge resistor.
   *
   * @param volts that it has to bear from end to end
   * @param watts at the first instant
   * @param joules that it has to take up in all
   * @param seconds to 1 V, at the least
   */
  public record Resistor(double ohms, double volts, double watts, double joules, double seconds) {
    /** Into how many of equal ohms it is divided at the least, for each to bear its share. */
    public int inSeries() {
      return Math.max(1, (int) Math.ceil(volts / RESISTOR_VOLTS));
    }
  }
}
