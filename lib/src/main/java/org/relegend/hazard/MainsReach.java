package org.relegend.hazard;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Node;
import org.relegend.circuit.NodeStep;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;

/**
 * All that is joined to the mains: across switches in any position, fuses, capacitors and whatever
 * isn't declared to isolate. That something isn't in here never means that it carries no mains: the
 * map may be unfinished or wrong.
 *
 * @param arrivals each node reached to the step that came there first; nothing for where mains
 *     comes in
 * @param barriers parts that keep mains from what lies beyond, and those that fail to
 * @param bridges capacitors from the mains across a barrier
 * @param earthed steps that end at protective earth, which is not walked through
 * @param chassis reference nets that the mains reaches: the chassis may be live
 * @param assumed parts of unknown kind, or windings nobody told apart, taken to join all their pins
 */
public record MainsReach(
    Map<Node, Optional<NodeStep>> arrivals,
    List<Barrier> barriers,
    List<Bridge> bridges,
    List<NodeStep> earthed,
    List<NetId> chassis,
    List<PartId> assumed,
    List<Contradiction> contradictions) {
  /**
   * A part that isolates.
   *
   * @param near its pins that mains reaches
   * @param far its pins that it keeps from the mains; empty where mains is on all sides
   * @param failure why it doesn't isolate between pins that mains reaches; empty where it does
   * @param way the parts by which mains comes to the other side
   */
  public record Barrier(
      PartId part,
      List<PinRef> near,
      List<PinRef> far,
      Optional<Failure> failure,
      List<PartId> way) {
    public Barrier {
      near = List.copyOf(near);
      far = List.copyOf(far);
      way = List.copyOf(way);
    }

    /** Why a part that should isolate has mains on both sides. */
    public enum Failure {
      /** Pins of both sides are on one net. */
      SHORTED,
      /** Mains comes to the other side by another way. */
      BYPASSED
    }
  }

  /**
   * A capacitor from the mains to what lies beyond a barrier.
   *
   * @param amps what it passes at most, root mean square; empty while its value isn't known
   * @param walked whether it was taken to carry mains across, since it passes too much
   */
  public record Bridge(PinRef near, PinRef far, OptionalDouble amps, boolean walked) {}

  /** A pin and its net that say opposite things. */
  public record Contradiction(PinRef pin, NetId net, String message) {}

  public MainsReach {
    arrivals = Collections.unmodifiableMap(new LinkedHashMap<>(arrivals));
    barriers = List.copyOf(barriers);
    bridges = List.copyOf(bridges);
    earthed = List.copyOf(earthed);
    chassis = List.copyOf(chassis);
    assumed = List.copyOf(assumed);
    contradictions = List.copyOf(contradictions);
  }

  public static MainsReach of(Circuit circuit) {
    return new MainsFinder(new CautiousTraversal(circuit)).find();
  }

  /** The nodes reached, nearest first, those where mains comes in among them. */
  public Set<Node> nodes() {
    return arrivals.keySet();
  }

  public boolean has(Node node) {
    return arrivals.containsKey(node);
  }

  /** The parts that mains passes on its way to a node, in order; none where it comes in there. */
  public List<PartId> wayTo(Node node) {
    Deque<PartId> way = new ArrayDeque<>();
    Optional<NodeStep> step = arrivals.getOrDefault(node, Optional.empty());
    while (step.isPresent()) {
      way.addFirst(step.get().out().part());
      way.addFirst(step.get().in().part());
      step = arrivals.getOrDefault(step.get().from(), Optional.empty());
    }
    return new ArrayList<>(new LinkedHashSet<>(way));
  }
}
