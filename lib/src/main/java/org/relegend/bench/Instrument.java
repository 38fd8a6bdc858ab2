package org.relegend.bench;

import org.relegend.map.TextRules;

/**
 * What a reading was taken with. A probe is a part of the circuit while it touches.
 *
 * @param name as the shop calls it; may be empty
 * @param ohms its input resistance; 0 while unknown
 * @param farads its input capacitance; 0 while unknown
 */
public record Instrument(String name, double ohms, double farads) {
  /** Nobody said. */
  public static final Instrument UNKNOWN = new Instrument("", 0, 0);

  /**
   * A digital meter or a ten-to-one probe: 10 megohms (common practice; standards reference 7b).
   */
  public static final Instrument DIGITAL_METER = new Instrument("digital meter", 10e6, 0);

  public Instrument {
    TextRules.line("instrument name", name);
    if (!(ohms >= 0 && ohms <= 1e15)) {
      throw new IllegalArgumentException("no instrument has an input of " + ohms + " ohms");
    }
    if (!(farads >= 0 && farads <= 1)) {
      throw new IllegalArgumentException("no instrument has an input of " + farads + " farads");
    }
  }

  /** Whether its input resistance is known. */
  public boolean known() {
    return ohms > 0;
  }
}
