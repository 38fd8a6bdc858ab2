package org.relegend.viewer.session;

import java.util.Optional;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Kinds;
import org.relegend.map.Part;
import org.relegend.marking.ComponentValues;
import org.relegend.marking.MarkingReadings;
import org.relegend.marking.ValueReading;

/** Values as typed, read as a part's kind tells what they must be. */
public final class PartValues {
  private PartValues() {}

  /**
   * What the value says. While the kind is unknown, that of the usual kind of such a designator is
   * expected; of a kind without number, nothing is.
   */
  public static MarkingReadings<ValueReading> read(Part part, String value) {
    Optional<Kind> kind = Kinds.standard().of(part);
    if (kind.isPresent() && kind.get().measured().isEmpty()) {
      return ComponentValues.read("");
    }
    return kind.or(() -> usual(part))
        .flatMap(known -> known.read(value))
        .orElseGet(() -> ComponentValues.read(value));
  }

  /** Of the kinds that share the class letters, the table has the usual one first. */
  private static Optional<Kind> usual(Part part) {
    return Kinds.standard().possible(part.designator()).stream().findFirst();
  }
}
