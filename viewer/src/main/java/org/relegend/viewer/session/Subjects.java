package org.relegend.viewer.session;

import java.util.Optional;
import org.relegend.map.PartId;
import org.relegend.map.Subject;

/** Questions to a subject. */
public final class Subjects {
  private Subjects() {}

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
}
