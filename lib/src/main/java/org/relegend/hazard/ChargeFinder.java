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
  /** What follows from some of the sources alone is told from here on: it is no limit. */
  private static final double PARTLY = VoltageLimits.INSTRUMENTS.dcVolts();

  private record Ends(Node a, Node b) {}

  /** A capacitor, or one section of a can. */
  private record Plates(Part part, OptionalDouble farads) {}

  private final Circuit circuit;
  private final MergedNodes wires;
  private final NodeVoltages levels;
  private final PeakVoltages peaks;
  private final UnknownSupply unknown;
  private final BleederNetwork bleeders;

  ChargeFinder(
      CautiousTraversal walk, MainsReach mains, PeakVoltages peaks, UnknownSupply unknown) {
    this.peaks = peaks;
    this.unknown = unknown;
    this.circuit = walk.circuit();
    this.wires = new MergedNodes(walk);
    this.levels = new NodeVoltages(circuit, mains);
    this.bleeders = new BleederNetwork(circuit, wires);
  }

  /** All there are, those of most energy first, those without figures last. */
  List<StoredCharge> find() {
    Map<Ends, List<Plates>> banks = new LinkedHashMap<>();
    for (Part part : circuit.map().parts()) {
      Optional<Kind> kind = circuit.kindOf(part.id());
      if (kind.filter(found -> found.family().equals("capacitor")).isPresent()) {
        List<PinPath> paths =
            kind.get().pathsOf(part).stream().filter(ChargeFinder::isPlates).toList();
        OptionalDouble farads =
            paths.size() > 1 ? WorstCaseValues.faradsOfSection(part) : WorstCaseValues.farads(part);
        paths.forEach(path -> enter(banks, new Plates(part, farads), path));
      }
    }
    List<StoredCharge> found = new ArrayList<>();
    banks.forEach((ends, parts) -> found.add(charge(ends, parts)));
    found.sort(
        Comparator.comparingDouble(
            charge -> -charge.discharge().map(Discharge::joules).orElse(-1.0)));
    return found;
  }

  /** Between pins whose roles nobody could read there may be plates as well. */
  private static boolean isPlates(PinPath path) {
    return path.conduction() == Conduction.CAPACITIVE || path.conduction() == Conduction.UNKNOWN;
  }

  private void enter(Map<Ends, List<Plates>> banks, Plates plates, PinPath path) {
    PartId part = plates.part().id();
    for (Node from : circuit.nodesOf(new PinRef(part, path.from()))) {
      for (Node to : circuit.nodesOf(new PinRef(part, path.to()))) {
        Ends ends = new Ends(wires.head(from), wires.head(to));
        Ends turned = new Ends(ends.b(), ends.a());
        if (!ends.a().equals(ends.b())) {
          banks
              .computeIfAbsent(banks.containsKey(turned) ? turned : ends, key -> new ArrayList<>())
              .add(plates);
        }
      }
    }
  }

  private StoredCharge charge(Ends ends, List<Plates> plates) {
    List<Part> parts = plates.stream().map(Plates::part).toList();
    Set<PartId> unread = new LinkedHashSet<>();
    double farads = 0;
    for (Plates one : plates) {
      farads += one.farads().orElse(0);
      if (one.farads().isEmpty()) {
        unread.add(one.part().id());
      }
    }
    OptionalDouble rated = rated(parts);
    Voltage voltage = voltage(wires.group(ends.a()), wires.group(ends.b()), rated);
    return new StoredCharge(
        List.copyOf(new LinkedHashSet<>(parts.stream().map(Part::id).toList())),
        List.of(ends.a(), ends.b()),
        farads,
        List.copyOf(unread),
        voltage.volts(),
        voltage.basis(),
        rated,
        bleeders.between(ends.a(), ends.b()));
  }

  private record Voltage(OptionalDouble volts, StoredCharge.Basis basis) {}

  /** What both nets tell as a direct voltage counts; else the larger of computed and rating. */
  private Voltage voltage(List<Node> a, List<Node> b, OptionalDouble rated) {
    Optional<NodeVoltages.Level> one = levels.of(a);
    Optional<NodeVoltages.Level> other = levels.of(b);
    boolean stated = one.isPresent() && other.isPresent();
    double declared = stated ? NodeVoltages.between(one.get(), other.get()) : 0;
    boolean plain = stated && levels.isPlain(one.get()) && levels.isPlain(other.get());
    double computed = plain || !isKnown(a) || !isKnown(b) ? 0 : peaks.between(a, b);
    double known = Math.max(declared, computed);
    boolean part = !stated && rated.isEmpty() && known < PARTLY && !(isWhole(a) && isWhole(b));
    if (known == 0 && !stated || part) {
      return rated.isEmpty()
          ? new Voltage(rated, StoredCharge.Basis.UNKNOWN)
          : new Voltage(rated, StoredCharge.Basis.RATED);
    }
    if (!plain && rated.orElse(0) > known) {
      return new Voltage(rated, StoredCharge.Basis.RATED);
    }
    return new Voltage(
        OptionalDouble.of(known),
        known > declared || !stated ? StoredCharge.Basis.COMPUTED : StoredCharge.Basis.DECLARED);
  }

  /** Whether all that feeds these nodes is told, so that what was computed is the most. */
  private boolean isWhole(List<Node> nodes) {
    return nodes.stream().anyMatch(peaks::isFollowed)
        && nodes.stream().noneMatch(unknown.reasons()::containsKey);
  }

  private boolean isKnown(List<Node> nodes) {
    return nodes.stream().anyMatch(peaks::knows);
  }

  /** Nobody can know which of them was chosen with least to spare, so the highest rating. */
  private static OptionalDouble rated(List<Part> parts) {
    return parts.stream()
        .map(WorstCaseValues::ratedVolts)
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .max();
  }
}
