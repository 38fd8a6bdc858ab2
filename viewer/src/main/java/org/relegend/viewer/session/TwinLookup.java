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
import org.relegend.map.Section;
import org.relegend.map.Subject;

/**
 * The twin of whatever is pointed at. What people said comes first: a pin's twin is the pin in the
 * same role of the twin section, else the one that the circuit tells, else of the same number of
 * the twin part; a net's the one net that the twins of its pins are on. Where nothing was said, it
 * is what follows from what was.
 */
public final class TwinLookup {
  /**
   * A twin.
   *
   * @param follows what it follows from; empty where people said it
   */
  public record Known(Subject subject, Optional<NodeCard.Follows> follows) {
    public static Known declared(Subject subject) {
      return new Known(subject, Optional.empty());
    }
  }

  private final MapIndex index;
  private final DerivedTwins following;

  public TwinLookup(MapIndex index, DerivedTwins following) {
    this.index = index;
    this.following = following;
  }

  public Optional<Known> of(Subject subject) {
    return declared(subject).map(Known::declared).or(() -> follows(subject));
  }

  /** What may be the twin, where the circuit can't tell which of several it is. */
  public List<Subject> several(Subject subject) {
    return following.several(subject);
  }

  private Optional<Subject> declared(Subject subject) {
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

  private Optional<Known> follows(Subject subject) {
    return following
        .of(subject)
        .map(found -> new Known(other(found, subject), Optional.of(found.follows())))
        .filter(known -> SubjectQueries.isIn(index.map(), known.subject()));
  }

  private static Subject other(DerivedTwins.Found found, Subject one) {
    return one.equals(found.pair().a()) ? found.pair().b() : found.pair().a();
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
    return declared
        .or(() -> bySection(pin))
        .or(() -> ofPart(pin.part()).flatMap(part -> among(part, pin)));
  }

  /** Of the pins of the twin part: a resistor may be drawn either way round. */
  private Optional<PinRef> among(Part part, PinRef pin) {
    return follows(Subject.of(pin))
        .map(Known::subject)
        .filter(Subject.OfPin.class::isInstance)
        .map(twin -> ((Subject.OfPin) twin).pin())
        .filter(twin -> twin.part().equals(part.id()))
        .or(
            () ->
                part.pin(pin.pin()).isPresent()
                    ? Optional.of(new PinRef(part.id(), pin.pin()))
                    : Optional.empty());
  }

  /** Halves of one part may be twins of each other, on pins of other numbers. */
  private Optional<PinRef> bySection(PinRef pin) {
    for (Section own : index.map().part(pin.part()).map(Part::sections).orElse(List.of())) {
      Optional<String> role = Optional.ofNullable(own.roles().get(pin.pin()));
      for (Subject twin : index.twinsOf(new Subject.OfSection(pin.part(), own.name()))) {
        if (role.isPresent() && twin instanceof Subject.OfSection other) {
          Optional<PinRef> found = inRole(other, role.get());
          if (found.isPresent()) {
            return found;
          }
        }
      }
    }
    return Optional.empty();
  }

  private Optional<PinRef> inRole(Subject.OfSection section, String role) {
    List<PinRef> found =
        index.map().part(section.part()).flatMap(part -> part.section(section.section())).stream()
            .flatMap(named -> named.roles().entrySet().stream())
            .filter(pin -> pin.getValue().equals(role))
            .map(pin -> new PinRef(section.part(), pin.getKey()))
            .toList();
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
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
