package org.relegend.marking;

import java.util.List;
import java.util.Optional;

/**
 * The letters that tell a tolerance (IEC 60062, tolerance clause); where each was seen stands
 * beside it. False meanings printed on web pages (A for 0.05 %, C for 0.2 %, L for 20 %) are left
 * out on purpose.
 */
public enum ToleranceLetter {
  // from memory of IEC 60062 clause 5
  E(0.00005),
  L(0.0001),
  P(0.0002),
  W(0.0005),
  // per cent: metal film table of GB/T 5729 (the text of IEC 60115-1); picofarads: a textbook's and
  // a
  // 1993 hobby table of capacitor markings
  B(0.001, 0.1e-12),
  C(0.0025, 0.25e-12),
  D(0.005, 0.5e-12),
  // per cent: a 1993 table quoting IEC 62 and BS 1852; picofarads: from memory
  F(0.01, 1e-12),
  G(0.02, 2e-12),
  // the same 1993 table
  J(0.05),
  K(0.10),
  M(0.20),
  // from memory
  H(0.03),
  N(0.30),
  // capacitors only; Z from the 1993 table, the others from memory
  Q(-0.10, 0.30, true),
  S(-0.20, 0.50, true),
  T(-0.10, 0.50, true),
  Z(-0.20, 0.80, true);

  /** Below this many farads B, C and D tell picofarads. */
  private static final double SMALL_CAPACITOR = 10e-12;

  private final double low;
  private final double high;
  private final double farads;
  private final boolean capacitorsOnly;

  ToleranceLetter(double fraction) {
    this(fraction, 0);
  }

  /** Farads are those of small capacitors; zero where the letter tells per cent on these too. */
  ToleranceLetter(double fraction, double farads) {
    this.low = -fraction;
    this.high = fraction;
    this.farads = farads;
    this.capacitorsOnly = false;
  }

  ToleranceLetter(double low, double high, boolean capacitorsOnly) {
    this.low = low;
    this.high = high;
    this.farads = 0;
    this.capacitorsOnly = capacitorsOnly;
  }

  /** The letter written so, upper case as the standard has it; empty if it tells no tolerance. */
  public static Optional<ToleranceLetter> of(char letter) {
    for (ToleranceLetter known : values()) {
      if (known.name().charAt(0) == letter) {
        return Optional.of(known);
      }
    }
    return Optional.empty();
  }

  /**
   * What the letter can mean on a part of this nominal value, likeliest first: none if it is not
   * used with that quantity, two where the sources leave it open (F and G below 10 pF).
   */
  public List<Tolerance> meanings(Quantity quantity, double value) {
    boolean used =
        switch (quantity) {
          case CAPACITANCE -> true;
          case RESISTANCE, INDUCTANCE -> !capacitorsOnly;
          default -> false;
        };
    if (!used) {
      return List.of();
    }
    Tolerance relative = new Tolerance(low, high, Tolerance.Basis.FRACTION);
    if (quantity != Quantity.CAPACITANCE || value >= SMALL_CAPACITOR || farads == 0) {
      return List.of(relative);
    }
    Tolerance absolute = Tolerance.absolute(farads);
    return this == F || this == G ? List.of(absolute, relative) : List.of(absolute);
  }
}
