package org.relegend.bench.suspect;

import org.relegend.map.NetId;

/**
 * What a fault would show at a node, beside what was read there; in volts, as the meter shows them.
 *
 * @param healthy as solved without a fault
 */
public record NodeFigure(NetId net, double read, double predicted, double healthy) {
  double change() {
    return Math.abs(predicted - healthy);
  }
}
