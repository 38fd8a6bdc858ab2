package org.relegend.demo.route;

/**
 * What the board's copper keeps to, in millimetres. {@code twinShift} is how far channel B lies
 * below channel A when B's copper is to repeat A's, or 0; {@code rounds} bounds the negotiation.
 */
record Rules(double pitch, double track, double clearance, double twinShift, int rounds) {
  static final double EDGE = 2.2;

  /** How near a foreign track's middle may come to the middle of a pad. */
  double padZone(double radius) {
    return radius + clearance + track / 2;
  }

  /** How near two tracks' middles may come, in cells, squared. */
  int trackZone(boolean mains) {
    double reach = (mains ? 2.6 : track + clearance - 0.02) / pitch;
    return (int) Math.ceil(reach * reach);
  }
}
