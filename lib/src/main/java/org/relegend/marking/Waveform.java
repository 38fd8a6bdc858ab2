package org.relegend.marking;

/**
 * Whether a voltage or current is told to be direct or alternating. A bare "230 V" tells neither.
 */
public enum Waveform {
  UNSTATED,
  DC,
  /** Alternating, given as its root mean square value, as ratings are (common practice). */
  AC
}
