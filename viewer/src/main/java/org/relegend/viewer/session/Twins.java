package org.relegend.viewer.session;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.relegend.map.MapIndex;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * The twin of whatever is pointed at, from the pairs that people declared: a pin's twin is the pin
 * of the same number of the twin part, a net's the one net that the twins of its pins are on.
 */
final class Twins {
  private final MapIndex index;

  Twins(MapIndex index) {
    this.index = index;
  }

  Optional<Subject> of(Subject subject) {
    Optional<Subject> declared = index.twinsOf(subject).stream().findFirst();
    if (declared.isPresent()) {
      return declared;
    }
    if (subject instanceof Subject.OfPin pin) {
      return ofPin(pin.pin()).map(Subject::of);
    }
    if (subject instanceof Subject.OfSection section) {
      return ofPart(section.part())
          .filter(part -> part.section(section.section()).isPresent())
          .map(part -> new Subject.OfSection(part.id(), section.section()));
    }
    return subject instanceof Subject.OfNet net
        ? index.map().net(net.net()).flatMap(this::ofNet).map(Subject::of)
        : Optional.empty();
  }

  private Optional<Part> ofPart(PartId part) {
    return index.twinsOf(Subject.of(part)).stream()
        .filter(Subject.OfPart.class::isInstance)
        .findFirst()
        .flatMap(twin -> index.map().part(((Subject.OfPart) twin).part()));
  }

  private Optional<PinRef> ofPin(PinRef pin) {
    Optional<PinRef> declared =
        index.twinsOf(Subject.of(pin)).stream()
            .filter(Subject.OfPin.class::isInstance)
            .map(twin -> ((Subject.OfPin) twin).pin())
            .findFirst();
    return declared.or(
        () ->
            ofPart(pin.part())
                .filter(part -> part.pin(pin.pin()).isPresent())
                .map(part -> new PinRef(part.id(), pin.pin())));
  }

  /** Where the twins of the pins don't agree on one other net, there is no telling. */
  private Optional<NetId> ofNet(Net net) {
    Set<NetId> candidates = new HashSet<>();
    for (PinRef pin : net.pins()) {
      List<Net> there = ofPin(pin).map(index::netsOf).orElse(List.of());
      there.forEach(candidate -> candidates.add(candidate.id()));
    }
    return candidates.size() == 1 && !candidates.contains(net.id())
        ? candidates.stream().findFirst()
        : Optional.empty();
  }
}
