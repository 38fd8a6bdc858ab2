package org.relegend.solve;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.relegend.map.BoardMap;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.Potential;

/**
 * The state in which a mapped circuit is to be solved.
 *
 * @param known volts of nets: the reference, rails as read or declared, nodes taken as boundaries
 * @param positions how switches stand, by part
 * @param wipers where wipers stand, from 0 to 1, by part; half way where not said
 * @param fitted values in the place of the map's
 * @param open nets of which it isn't known that the map has all that is joined to them
 */
public record OperatingState(
    Map<NetId, Double> known,
    Map<PartId, String> positions,
    Map<PartId, Double> wipers,
    Map<PartId, String> fitted,
    Set<NetId> open) {
  public OperatingState {
    known = Map.copyOf(known);
    positions = Map.copyOf(positions);
    wipers = Map.copyOf(wipers);
    fitted = Map.copyOf(fitted);
    open = Set.copyOf(open);
  }

  /** As the map declares it: the reference at nothing, each direct rail at its nominal volts. */
  public static OperatingState declared(BoardMap map) {
    Map<NetId, Double> known = new TreeMap<>();
    for (Net net : map.nets()) {
      Potential potential = net.potential();
      if (potential.nature() == Potential.Nature.REFERENCE) {
        known.put(net.id(), 0.0);
      } else if (potential.nature() == Potential.Nature.DC && potential.volts() != 0) {
        known.put(net.id(), potential.volts());
      }
    }
    return new OperatingState(known, Map.of(), Map.of(), Map.of(), Set.of());
  }

  /** With a net as a boundary at these volts. */
  public OperatingState withKnown(NetId net, double volts) {
    Map<NetId, Double> more = new TreeMap<>(known);
    more.put(net, volts);
    return new OperatingState(more, positions, wipers, fitted, open);
  }

  /** With these nets not known complete. */
  public OperatingState withOpen(Set<NetId> nets) {
    return new OperatingState(known, positions, wipers, fitted, nets);
  }
}
