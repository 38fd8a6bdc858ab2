package org.relegend.hazard;

import java.util.ArrayList;
import java.util.List;
import org.relegend.circuit.Node;

/** Finds rails of opposite sign between which the voltage is high, though against 0 V it isn't. */
record RailPairs(CautiousTraversal walk, PeakVoltages peaks, VoltageLimits limits) {
  List<Across> find() {
    List<Node> rails = peaks.nodes().stream().filter(this::isRail).toList();
    List<Across> found = new ArrayList<>();
    for (Node positive : rails) {
      for (Node negative : rails) {
        double up = peaks.highest(positive);
        double down = peaks.lowest(negative);
        if (up > 0 && down < 0 && isPair(up, down)) {
          found.add(new Across(positive, negative, up - down));
        }
      }
    }
    return found;
  }

  private boolean isPair(double up, double down) {
    return limits.isHighDc(up - down) && !limits.isHighDc(up) && !limits.isHighDc(down);
  }

  /** A net told to be a rail, and what comes straight from a diode and doesn't alternate. */
  private boolean isRail(Node node) {
    return peaks.declared().direct().containsKey(node)
        || !peaks.declared().isTold(node)
            && peaks.swings().at(node).isEmpty()
            && peaks.bounds(node).anyMatch(b -> !b.alternating())
            && peaks.at(node).flatMap(PeakVoltages.Bound::step).filter(walk::isDiode).isPresent();
  }
}
