package org.relegend.hazard;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.relegend.circuit.Node;
import org.relegend.map.HazardZone;

/**
 * What is known of the danger at one node. No grade says that nothing is there: the lowest says
 * that the map holds nothing against it.
 *
 * @param kind of the danger; empty where none is known, or not which
 * @param volts the most that is known to stand there, peak against the reference, without sign;
 *     empty where nothing tells. It is no limit unless the grade is {@link Grade#CARRIES}
 * @param joules the most that a capacitor at the node can hold; empty where none has figures
 * @param reason where it comes from, one sentence or more
 */
public record NodeHazard(
    Node node,
    Grade grade,
    Optional<HazardZone.Kind> kind,
    OptionalDouble volts,
    OptionalDouble joules,
    String reason) {
  /** How sure a danger is, the surest first. */
  public enum Grade {
    /** Mains, or a voltage above the limits, is there while all works. */
    CARRIES("carries"),
    /** Nobody told the voltage of what feeds it: it is taken as high until someone does. */
    UNKNOWN("unknown, take as high"),
    /** Not while all works, but a part that fails can bring it there. */
    FAULT("may carry in a fault"),
    /** The map holds nothing against it; that says nothing of the instrument. */
    NOT_KNOWN("nothing known");

    private final String words;

    Grade(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** Whether a hand or a probe is to be kept away, or someone asked first. */
  public boolean isSuspect() {
    return grade == Grade.CARRIES || grade == Grade.UNKNOWN;
  }

  static NodeHazard unknown(Node node, String reason) {
    return new NodeHazard(
        node,
        Grade.UNKNOWN,
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        reason);
  }

  NodeHazard withFigures(OptionalDouble most, OptionalDouble energy) {
    return new NodeHazard(node, grade, kind, most, energy, reason);
  }

  /** All of these, those who ask for several nodes want the surest. */
  static Optional<NodeHazard> surest(List<NodeHazard> hazards) {
    return hazards.stream().min(java.util.Comparator.comparing(NodeHazard::grade));
  }
}
