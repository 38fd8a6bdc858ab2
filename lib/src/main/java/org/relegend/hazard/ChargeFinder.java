package org.relegend.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Conduction;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Node;
import org.relegend.circuit.PinPath;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;

/** Finds every capacitor, those that lie side by side taken together. */
final class ChargeFinder {
  private record Ends(Node a, Node b) {}

  private final Circuit circuit;
  private final Wires wires;
  private final Levels levels;
  private final Bleeders bleeders;

  ChargeFinder(Walk walk, MainsReach mains) {
    this.circuit = walk.circuit();
    this.wires = new Wires(walk);
    this.levels = new Levels(circuit, mains);
    this.bleeders = new Bleeders(circuit, wires);
  }

  /** All there are, those of most energy first, those without figures last. */
  List<StoredCharge> find() {
    Map<Ends, List<Part>> banks = new LinkedHashMap<>();
    for (Part part : circuit.map().parts()) {
      Optional<Kind> kind = circuit.kindOf(part.id());
      if (kind.filter(found -> found.family().equals("capacitor")).isPresent()) {
        for (PinPath path : kind.get().pathsOf(part)) {
          if (path.conduction() == Conduction.CAPACITIVE) {
            enter(banks, part, path);
          }
        }
      }
    }
    List<StoredCharge> found = new ArrayList<>();
    banks.forEach((ends, parts) -> found.add(charge(ends, parts)));
    found.sort(
        Comparator.comparingDouble(
            charge -> -charge.discharge().map(Discharge::joules).orElse(-1.0)));
    return found;
  }

  private void enter(Map<Ends, List<Part>> banks, Part part, PinPath path) {
    for (Node from : circuit.nodesOf(new PinRef(part.id(), path.from()))) {
      for (Node to : circuit.nodesOf(new PinRef(part.id(), path.to()))) {
        Ends ends = new Ends(wires.head(from), wires.head(to));
        Ends turned = new Ends(ends.b(), ends.a());
        if (!ends.a().equals(ends.b())) {
          banks
              .computeIfAbsent(banks.containsKey(turned) ? turned : ends, key -> new ArrayList<>())
              .add(part);
        }
      }
    }
  }

  private StoredCharge charge(Ends ends, List<Part> parts) {
    Set<PartId> unread = new LinkedHashSet<>();
    double farads = 0;
    for (Part part : parts) {
      OptionalDouble value = Values.farads(part);
      farads += value.orElse(0);
      if (value.isEmpty()) {
        unread.add(part.id());
      }
    }
    Optional<Levels.Level> a = levels.of(wires.group(ends.a()));
    Optional<Levels.Level> b = levels.of(wires.group(ends.b()));
    boolean known = a.isPresent() && b.isPresent();
    OptionalDouble volts =
        known ? OptionalDouble.of(Levels.between(a.get(), b.get())) : rated(parts);
    StoredCharge.Basis rough =
        volts.isPresent() ? StoredCharge.Basis.RATED : StoredCharge.Basis.UNKNOWN;
    return new StoredCharge(
        List.copyOf(new LinkedHashSet<>(parts.stream().map(Part::id).toList())),
        List.of(ends.a(), ends.b()),
        farads,
        List.copyOf(unread),
        volts,
        known ? StoredCharge.Basis.DECLARED : rough,
        bleeders.between(ends.a(), ends.b()));
  }

  /** Nobody can know which of them was chosen with least to spare, so the highest rating. */
  private static OptionalDouble rated(List<Part> parts) {
    return parts.stream()
        .map(Values::ratedVolts)
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .max();
  }
}
