package org.relegend.circuit;

import java.util.Locale;

/** How current can flow between two pins inside a part. */
public enum Conduction {
  /** No resistance to speak of, always: a link, a whole fuse. */
  WIRE,
  /** As a wire in one position, not at all in the others: switch and relay contacts. */
  CONTACT,
  /** A resistance, both ways. */
  OHMIC,
  /** A coil: hardly any resistance to direct current. */
  WINDING,
  /** A semiconductor junction: from the first pin to the second, little back. */
  JUNCTION,
  /** Under control of another pin or above a voltage: collector to emitter, a valve, a varistor. */
  GATED,
  /** Alternating current only. */
  CAPACITIVE,
  /** Some circuit inside: an op-amp from pin to pin. */
  INTERNAL,
  /** Nobody knows: the part's kind or the pin's role isn't known. */
  UNKNOWN;

  /** The word used in the table of kinds. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether direct current can flow this way, at least at times, or for all that is known. */
  public boolean passesDirect() {
    return this != CAPACITIVE;
  }
}
