package org.relegend.solve;

import java.util.List;

/**
 * How the currents into a device's terminals follow from their voltages. Laws are immutable values.
 * All voltages are against one common reference, in volts; currents in amperes, positive into the
 * terminal.
 */
public interface DeviceLaw {
  /** How many terminals it has. */
  int terminals();

  /**
   * The currents at these voltages and their slopes.
   *
   * @param v volts of the terminals
   * @param i amperes into each, written in place
   * @param g {@code g[k * terminals + m]}: siemens, how current k follows voltage m; in place
   */
  void conduct(double[] v, double[] i, double[] g);

  /**
   * Shortens a step of Newton's method to where the slopes still mean something, in place.
   *
   * @param from the voltages that the device was last seen at
   * @param to those proposed
   * @return whether anything was shortened
   */
  default boolean limit(double[] from, double[] to) {
    return false;
  }

  /**
   * Turns the slopes at direct current into those at an angular frequency.
   *
   * @param omega radians a second
   * @param g the slopes as {@link #conduct} gives them, changed in place
   * @param b the imaginary part, which comes as zeros
   */
  default void react(double omega, double[] g, double[] b) {}

  /**
   * The law with its gain limited, for solving what is hard to solve at once; itself by default.
   */
  default DeviceLaw withGainAtMost(double gain) {
    return this;
  }

  /** The law with its own sources at a fraction of their strength; itself by default. */
  default DeviceLaw withSourcesAt(double fraction) {
    return this;
  }

  /**
   * The law of healthy devices that lie one standard deviation off, one for each property that
   * varies from piece to piece independently of the others.
   */
  default List<DeviceLaw> spread() {
    return List.of();
  }
}
