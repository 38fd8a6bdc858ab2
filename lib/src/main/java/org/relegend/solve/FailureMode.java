package org.relegend.solve;

import java.util.Locale;

/** In which way a part or a connection fails. */
public enum FailureMode {
  OPEN,
  SHORT,
  LEAK,
  /** The value has risen. */
  HIGH,
  /** The value, the gain or the emission has fallen. */
  LOW,
  /** An output that stays at one of its ends. */
  STUCK,
  /** A pin that has lost its joint. */
  JOINT,
  /** Solder or dirt between two nodes. */
  BRIDGE,
  /** Another value was fitted than belongs there. */
  WRONG_VALUE,
  /** A conductor that joins only some of its pins. */
  BROKEN_CONDUCTOR;

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
