package org.relegend.marking;

import static java.util.Objects.requireNonNull;

/**
 * A number with what it measures.
 *
 * @param value in the unit of the quantity, without prefix: ohms, farads, volts…; finite
 * @param waveform for voltages and currents; UNSTATED for all else
 */
public record Amount(Quantity quantity, double value, Waveform waveform) {
  public Amount {
    requireNonNull(quantity);
    requireNonNull(waveform);
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("an amount needs a finite number, not " + value);
    }
    value = value + 0.0; // turns -0.0 into 0.0, so that equal amounts are equal
  }

  public Amount(Quantity quantity, double value) {
    this(quantity, value, Waveform.UNSTATED);
  }

  /** For people, with up to six significant figures: "4.7 kΩ", "-14.23 V", "275 V AC". */
  public String text() {
    return AmountText.spaced(this, 6);
  }

  /**
   * As {@link #text()}, rounded half up to so many significant figures.
   *
   * @throws IllegalArgumentException unless figures is 1 to 15
   */
  public String text(int figures) {
    return AmountText.spaced(this, figures);
  }

  /**
   * As written on parts and drawings, with up to four significant figures: "4k7", "0R47", "1n0",
   * "5V1". The prefix stands in for the point (IEC 60062, letter and digit code); quantities that
   * the code does not cover are written close up: "100mA".
   *
   * @throws IllegalArgumentException if the value is negative
   */
  public String code() {
    return AmountText.code(this);
  }
}
