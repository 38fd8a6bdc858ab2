package org.relegend.circuit;

import java.util.List;
import org.relegend.map.Subject;

/**
 * Something in a map that no circuit can have. The circuit goes on with the rest.
 *
 * @param subjects what it is about, the culprit first
 * @param message one sentence for people, in ids
 */
public record CircuitFault(Sort sort, List<Subject> subjects, String message) {
  /** The faults there are. */
  public enum Sort {
    /** A pin stands on more than one net. */
    PIN_ON_SEVERAL_NETS,
    /** A net names a part that the map hasn't got. */
    NO_SUCH_PART,
    /** A net names a pin that its part hasn't got. */
    NO_SUCH_PIN,
    /** A connector is plugged into a part that the map hasn't got. */
    MATED_WITH_NOTHING
  }

  public CircuitFault {
    subjects = List.copyOf(subjects);
  }
}
