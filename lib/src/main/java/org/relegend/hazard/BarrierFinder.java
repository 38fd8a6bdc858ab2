package org.relegend.hazard;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Node;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;

/** Finds the parts at which mains stops, and those at which it should. */
record BarrierFinder(CautiousTraversal walk, MainsReach reach, List<Part> isolating) {
  MainsReach withBarriers() {
    List<MainsReach.Barrier> barriers = new ArrayList<>();
    isolating.forEach(part -> barrier(part).ifPresent(barriers::add));
    return new MainsReach(
        reach.arrivals(),
        barriers,
        reach.bridges(),
        reach.earthed(),
        reach.chassis(),
        reach.assumed(),
        reach.contradictions());
  }

  private Optional<MainsReach.Barrier> barrier(Part part) {
    List<PinRef> near = part.pins().stream().map(part::ref).filter(this::isReached).toList();
    List<PinRef> far =
        part.pins().stream()
            .map(part::ref)
            .filter(pin -> !near.contains(pin))
            .filter(pin -> near.stream().anyMatch(other -> walk.isolates(part, other, pin)))
            .toList();
    Optional<MainsReach.Barrier.Failure> failure = Optional.empty();
    List<PartId> way = List.of();
    for (PinRef a : near) {
      for (PinRef b : near) {
        if (walk.isolates(part, a, b)) {
          if (isShorted(a, b)) {
            failure = Optional.of(MainsReach.Barrier.Failure.SHORTED);
            way = List.of();
          } else if (failure.isEmpty() && !walk.isOf(part.id(), "relay")) {
            failure = Optional.of(MainsReach.Barrier.Failure.BYPASSED);
            way = longer(wayTo(a), wayTo(b));
          }
        }
      }
    }
    return far.isEmpty() && failure.isEmpty()
        ? Optional.empty()
        : Optional.of(new MainsReach.Barrier(part.id(), near, far, failure, way));
  }

  private static List<PartId> longer(List<PartId> a, List<PartId> b) {
    return a.size() >= b.size() ? a : b;
  }

  private List<PartId> wayTo(PinRef pin) {
    return circuit().nodesOf(pin).stream()
        .filter(reach::has)
        .findFirst()
        .map(reach::wayTo)
        .orElse(List.of());
  }

  private boolean isShorted(PinRef a, PinRef b) {
    List<Node> mine = circuit().nodesOf(a);
    return !Collections.disjoint(mine, circuit().nodesOf(b));
  }

  private boolean isReached(PinRef pin) {
    return circuit().nodesOf(pin).stream().anyMatch(reach::has);
  }

  private Circuit circuit() {
    return walk.circuit();
  }
}
