package org.relegend.viewer.view;

import org.relegend.map.BoardTurn;

/**
 * How a picture is turned for looking at it: first mirrored left to right if so chosen, then turned
 * clockwise. It changes the view only, never a place on the picture.
 *
 * @param quarterTurns clockwise quarter turns, 0 to 3
 * @param tilt a further clockwise turn in degrees, within ±{@value #MAX_TILT}, to set a crooked
 *     scan straight
 */
public record Orientation(int quarterTurns, boolean mirrored, double tilt) {
  /** Largest tilt in degrees. */
  public static final double MAX_TILT = 15;

  /** As the picture is. */
  public static final Orientation UPRIGHT = new Orientation(0, false, 0);

  public Orientation {
    if (quarterTurns < 0 || quarterTurns > 3) {
      throw new IllegalArgumentException("quarter turns go from 0 to 3, not " + quarterTurns);
    }
    if (!(Math.abs(tilt) <= MAX_TILT)) {
      throw new IllegalArgumentException("a tilt of %s degrees is too large".formatted(tilt));
    }
  }

  /**
   * Shows a photo of the solder side as if looked at through the board from the component side, the
   * way the component side's photo lies.
   *
   * @param turn over which edge the board was turned for the photo; taken as the side edge where
   *     that is unknown
   */
  public static Orientation throughBoard(BoardTurn turn) {
    return new Orientation(turn == BoardTurn.TOP_EDGE ? 2 : 0, true, 0);
  }

  public Orientation turned(int clockwiseQuarters) {
    return new Orientation(Math.floorMod(quarterTurns + clockwiseQuarters, 4), mirrored, tilt);
  }

  /** Left and right on the screen change places. */
  public Orientation flipped() {
    return new Orientation(Math.floorMod(-quarterTurns, 4), !mirrored, -tilt);
  }

  public Orientation tilted(double degrees) {
    return new Orientation(quarterTurns, mirrored, degrees);
  }

  /** Clockwise turn on the screen, in degrees. */
  public double degrees() {
    return 90 * quarterTurns + tilt;
  }

  /** Whether rows of the picture are rows or columns of the screen. */
  public boolean squareOn() {
    return tilt == 0;
  }
}
