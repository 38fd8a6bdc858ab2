package org.relegend.viewer.session;

import java.util.Optional;
import org.relegend.map.BoardMap;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/** Questions to a subject. */
public final class SubjectQueries {
  private SubjectQueries() {}

  /** The part that it is, or that it belongs to; none for a net. */
  public static Optional<PartId> partOf(Subject subject) {
    if (subject instanceof Subject.OfPart part) {
      return Optional.of(part.part());
    }
    if (subject instanceof Subject.OfSection section) {
      return Optional.of(section.part());
    }
    return subject instanceof Subject.OfPin pin ? Optional.of(pin.pin().part()) : Optional.empty();
  }

  /** Whether the map has it. */
  public static boolean isIn(BoardMap map, Subject subject) {
    if (subject instanceof Subject.OfNet net) {
      return map.nets().has(net.net());
    }
    if (subject instanceof Subject.OfPin pin) {
      PinRef ref = pin.pin();
      return map.part(ref.part()).flatMap(part -> part.pin(ref.pin())).isPresent();
    }
    return subject instanceof Subject.OfSection section
        ? map.part(section.part()).flatMap(part -> part.section(section.section())).isPresent()
        : map.parts().has(((Subject.OfPart) subject).part());
  }
}
