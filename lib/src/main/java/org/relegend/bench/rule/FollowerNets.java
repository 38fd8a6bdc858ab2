package org.relegend.bench.rule;

import java.util.Optional;
import org.relegend.map.NetId;

/** Nets that have no voltage of their own and only show that of another. */
public final class FollowerNets {
  private FollowerNets() {}

  /** The net that this one follows: through its one resistor, in which no current flows. */
  public static Optional<NetId> of(UnitReadings unit, NetId net) {
    return NodeCurrents.asRead(unit, net)
        .filter(sum -> sum.complete() && sum.closed() && sum.branches().size() == 1)
        .filter(sum -> Math.abs(sum.amps()) <= sum.tolerance())
        .map(sum -> sum.branches().get(0).other());
  }
}
