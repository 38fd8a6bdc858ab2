package org.relegend.hazard;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Terminal;
import org.relegend.lineup.PlacementCarrier;
import org.relegend.map.BoardMap;
import org.relegend.map.HazardZone;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;

/**
 * Finds placed dangers outside of zones, drawn there or carried there by line-ups, and dangers that
 * aren't placed. A body that a zone only touches isn't marked by it: what sticks out can hurt too.
 */
final class UnmarkedHazardFinder {
  private static final Map<HazardZone.Kind, Set<HazardZone.Kind>> FITTING =
      new EnumMap<>(
          Map.of(
              HazardZone.Kind.MAINS, EnumSet.of(HazardZone.Kind.MAINS),
              HazardZone.Kind.HIGH_VOLTAGE,
                  EnumSet.of(HazardZone.Kind.HIGH_VOLTAGE, HazardZone.Kind.MAINS),
              HazardZone.Kind.STORED_CHARGE,
                  EnumSet.of(
                      HazardZone.Kind.STORED_CHARGE,
                      HazardZone.Kind.HIGH_VOLTAGE,
                      HazardZone.Kind.MAINS)));

  /** So much of a body may stick out of its zone: outlines are drawn by hand. */
  private static final double NOTEWORTHY = 0.05;

  private final Circuit circuit;
  private final BoardMap zoned;
  private final Map<Subject, HazardZone.Kind> dangers = new LinkedHashMap<>();

  UnmarkedHazardFinder(Circuit circuit, List<HazardousNode> reached, List<StoredCharge> charges) {
    this.circuit = circuit;
    this.zoned = PlacementCarrier.of(circuit.map()).zoned();
    for (HazardousNode node : reached) {
      node.pins().forEach(pin -> enterPin(pin, node.kind()));
    }
    for (StoredCharge charge : charges) {
      charge.capacitors().forEach(this::enterCapacitor);
    }
  }

  /** The pin, and the body it belongs to: bodies of fuses and terminals are live as well. */
  private void enterPin(PinRef pin, HazardZone.Kind kind) {
    dangers.putIfAbsent(Subject.of(pin), kind);
    for (Terminal terminal : circuit.terminalsOf(pin.part())) {
      if (terminal.number().equals(pin.pin()) && !terminal.section().isEmpty()) {
        dangers.putIfAbsent(new Subject.OfSection(pin.part(), terminal.section()), kind);
      }
    }
    dangers.putIfAbsent(Subject.of(pin.part()), kind);
  }

  private void enterCapacitor(PartId part) {
    HazardZone.Kind kind = HazardZone.Kind.STORED_CHARGE;
    dangers.putIfAbsent(Subject.of(part), kind);
    circuit
        .map()
        .part(part)
        .ifPresent(
            found ->
                found.pins().forEach(pin -> dangers.putIfAbsent(Subject.of(found.ref(pin)), kind)));
  }

  /** In the order of the map's placements. Charge is looked for on photos only. */
  List<UnmarkedHazard> unmarked() {
    List<UnmarkedHazard> found = new ArrayList<>();
    for (Placement placement : circuit.map().placements()) {
      HazardZone.Kind kind = dangers.get(placement.subject());
      if (kind != null && isShown(placement, kind)) {
        double outside = outside(placement, kind);
        if (outside > NOTEWORTHY) {
          found.add(
              new UnmarkedHazard(
                  placement.picture(),
                  placement.subject(),
                  placement.at(),
                  placement.outline(),
                  kind,
                  outside));
        }
      }
    }
    return found;
  }

  private boolean isShown(Placement placement, HazardZone.Kind kind) {
    return kind != HazardZone.Kind.STORED_CHARGE
        || circuit.map().picture(placement.picture()).filter(Photo.class::isInstance).isPresent();
  }

  /** A body counts by its area, and what has none by its point. */
  private double outside(Placement placement, HazardZone.Kind kind) {
    Set<HazardZone.Kind> fitting = FITTING.getOrDefault(kind, Set.of());
    List<List<Point>> zones =
        HazardZones.over(zoned, placement).stream()
            .filter(zone -> fitting.contains(zone.kind()))
            .map(HazardZone::outline)
            .toList();
    if (placement.outline().size() < 3) {
      return zones.isEmpty() ? 1 : 0;
    }
    return ZoneOutline.shareOutside(placement.outline(), zones);
  }

  /** Pins that mains or high voltage reaches and that are on no photo yet. */
  List<PinRef> unplaced() {
    Set<Subject> placed = new LinkedHashSet<>();
    for (Placement placement : circuit.map().placements()) {
      if (circuit.map().picture(placement.picture()).filter(Photo.class::isInstance).isPresent()) {
        placed.add(placement.subject());
      }
    }
    return dangers.entrySet().stream()
        .filter(danger -> danger.getValue() != HazardZone.Kind.STORED_CHARGE)
        .map(Map.Entry::getKey)
        .filter(subject -> subject instanceof Subject.OfPin && !placed.contains(subject))
        .map(subject -> ((Subject.OfPin) subject).pin())
        .sorted()
        .toList();
  }
}
