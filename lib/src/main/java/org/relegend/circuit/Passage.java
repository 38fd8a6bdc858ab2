package org.relegend.circuit;

import java.util.Locale;

/** What an extended node may pass through without counting as another node. */
public enum Passage {
  /** From a connector to the one it is plugged into, pin by pin. */
  CONNECTOR,
  /** Wire links and jumpers. */
  LINK,
  /** Resistors of no ohms. */
  ZERO_OHM,
  /** Fuses, taken to be whole. */
  FUSE,
  /** Closed contacts of switches. */
  SWITCH,
  /** Closed contacts of relays. */
  RELAY;

  /** The word used in tables and on the command line: "zero-ohm". */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
