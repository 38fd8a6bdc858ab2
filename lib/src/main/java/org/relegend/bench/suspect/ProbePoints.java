package org.relegend.bench.suspect;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.relegend.bench.rule.UnitHazards;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.circuit.Node;
import org.relegend.hazard.HazardZones;
import org.relegend.lineup.PlacementCarrier;
import org.relegend.map.HazardZone;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.ZoneId;

/**
 * Where a probe may be sent: never into a hazard zone, nor to what mains or high voltage reach by
 * the map or by what was read, nor to what is unknown on the supply side.
 */
final class ProbePoints {
  private final UnitReadings unit;
  private final UnitHazards hazards;
  private final Table<ZoneId, HazardZone> zones;

  ProbePoints(UnitReadings unit) {
    this.unit = unit;
    this.zones = PlacementCarrier.of(unit.map()).zoned().zones();
    this.hazards = unit.hazards();
  }

  /** The pin of a net that is easiest to touch; empty where none may be proposed. */
  Optional<PinRef> pin(NetId net) {
    return shunned(Node.of(net))
        ? Optional.empty()
        : unit.pins(net).stream()
            .filter(pin -> !inZone(Subject.of(pin)) && !inZone(Subject.of(pin.part())))
            .filter(pin -> !shunned(Node.of(pin)))
            .min(Comparator.comparing(this::trouble).thenComparing(pin -> pin));
  }

  /** Whether a part may be proposed for testing: none of it in a zone or on a reached net. */
  boolean mayTouch(Part part) {
    return !inZone(Subject.of(part.id()))
        && part.pins().stream()
            .map(part::ref)
            .noneMatch(
                pin ->
                    inZone(Subject.of(pin))
                        || unit.circuit().nodesOf(pin).stream().anyMatch(this::shunned));
  }

  /** High by the map or by a reading, or of unknown voltage on the supply side. */
  private boolean shunned(Node node) {
    return hazards.isReached(node) || hazards.isUntold(node);
  }

  /** How a capacitor is to be discharged before it is touched. */
  Optional<String> dischargeFirst(Part part) {
    return hazards.dischargeFirst(part.id());
  }

  private boolean inZone(Subject subject) {
    List<Placement> placements = unit.circuit().index().placementsOf(subject);
    for (HazardZone zone : zones) {
      for (Placement placement : placements) {
        if (HazardZones.isOver(zone, placement)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Pins of many-legged parts are close together, where a probe slips. */
  private int trouble(PinRef pin) {
    boolean unplaced = unit.circuit().index().placementsOf(Subject.of(pin)).isEmpty();
    return (closePitched(pin) ? legs(pin) : 0) + (unplaced ? 100 : 0);
  }

  private int legs(PinRef pin) {
    return unit.map().part(pin.part()).map(part -> part.pins().size()).orElse(99);
  }

  /** Whether a probe that slips there meets another pin. */
  boolean closePitched(PinRef pin) {
    return legs(pin) > 3;
  }

  /** Whether a net's best pin is a hard one. */
  boolean hard(PinRef pin) {
    return trouble(pin) > 0;
  }
}
