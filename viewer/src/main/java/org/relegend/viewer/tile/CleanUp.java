package org.relegend.viewer.tile;

/**
 * Makes a poor scan easier to read; changes what is seen, never the file.
 *
 * @param brightness from -1 (black) to 1 (white); 0 leaves it
 * @param contrast steepness about mid-grey, from 0.25 to 8; 1 leaves it
 * @param threshold 1 to 255: lighter becomes white, the rest black; 0 for none
 */
public record CleanUp(double brightness, double contrast, int threshold) {
  /** Changes nothing. */
  public static final CleanUp NONE = new CleanUp(0, 1, 0);

  public CleanUp {
    if (!(Math.abs(brightness) <= 1)) {
      throw new IllegalArgumentException("a brightness of " + brightness);
    }
    if (!(contrast >= 0.25 && contrast <= 8)) {
      throw new IllegalArgumentException("a contrast of " + contrast);
    }
    if (threshold < 0 || threshold > 255) {
      throw new IllegalArgumentException("a threshold of " + threshold);
    }
  }
}
