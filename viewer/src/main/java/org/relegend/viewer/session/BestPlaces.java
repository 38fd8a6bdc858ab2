package org.relegend.viewer.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.relegend.hazard.HazardZones;
import org.relegend.map.BoardMap;
import org.relegend.map.MapIndex;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Section;
import org.relegend.map.Subject;

/** Where something is best seen: itself, or what comes nearest to it. */
public final class BestPlaces {
  private final MapIndex index;

  public BestPlaces(MapIndex index) {
    this.index = index;
  }

  /**
   * The place to show a subject at, on a page or on a photo.
   *
   * @param kind {@code Page.class} or {@code Photo.class}
   * @param preferred the picture that lies there now; another is taken only where this has nothing
   */
  public Optional<Placement> of(
      Subject subject, Class<? extends Picture> kind, Optional<? extends Picture> preferred) {
    return of(subject, kind, preferred, picture -> true);
  }

  /** As {@link #of(Subject, Class, Optional)}, on some of the pictures only. */
  public Optional<Placement> of(
      Subject subject,
      Class<? extends Picture> kind,
      Optional<? extends Picture> preferred,
      Predicate<PictureId> among) {
    List<Placement> all =
        inOrder(subject).stream()
            .flatMap(stand -> index.placementsOf(stand).stream())
            .filter(placement -> isOf(kind, placement.picture()) && among.test(placement.picture()))
            .sorted(Comparator.comparing(placement -> shunned(subject, placement)))
            .toList();
    Optional<PictureId> here = preferred.map(Picture::id);
    return all.stream()
        .filter(placement -> here.filter(placement.picture()::equals).isPresent())
        .findFirst()
        .or(() -> all.stream().findFirst());
  }

  /** Everything on a picture that belongs to a subject: of a pin its part, of a net its pins. */
  public List<Placement> belonging(Subject subject, PictureId picture) {
    Optional<PartId> part = SubjectQueries.partOf(subject);
    Subject whole = part.map(Subject::of).orElse(subject);
    return inOrder(whole).stream()
        .filter(stand -> part.isPresent() || !(stand instanceof Subject.OfPart))
        .flatMap(stand -> index.placementsOf(stand).stream())
        .filter(placement -> placement.picture().equals(picture))
        .toList();
  }

  /** A net has many places: those in hazard zones come last. */
  private boolean shunned(Subject subject, Placement placement) {
    return subject instanceof Subject.OfNet && !HazardZones.over(index.map(), placement).isEmpty();
  }

  private boolean isOf(Class<? extends Picture> kind, PictureId picture) {
    return index.map().picture(picture).filter(kind::isInstance).isPresent();
  }

  /** The subject, then what may stand for it, from near to far. */
  private List<Subject> inOrder(Subject subject) {
    BoardMap map = index.map();
    List<Subject> stands = new ArrayList<>();
    stands.add(subject);
    if (subject instanceof Subject.OfPin pin) {
      map.part(pin.pin().part()).ifPresent(part -> stands.addAll(around(part, pin.pin().pin())));
    } else if (subject instanceof Subject.OfSection section) {
      stands.add(Subject.of(section.part()));
    } else if (subject instanceof Subject.OfPart part) {
      map.part(part.part()).ifPresent(found -> stands.addAll(inside(found)));
    } else if (subject instanceof Subject.OfNet net) {
      map.net(net.net()).ifPresent(found -> found.pins().forEach(pin -> stands.add(of(pin))));
      map.net(net.net())
          .ifPresent(found -> found.pins().forEach(pin -> stands.add(Subject.of(pin.part()))));
    }
    return stands;
  }

  private static Subject of(PinRef pin) {
    return Subject.of(pin);
  }

  private static List<Subject> around(Part part, String pin) {
    Stream<Subject> sections =
        part.sectionsOf(pin).stream()
            .map(Section::name)
            .map(name -> new Subject.OfSection(part.id(), name));
    return Stream.concat(sections, Stream.of(Subject.of(part.id()))).toList();
  }

  private static List<Subject> inside(Part part) {
    Stream<Subject> sections =
        part.sections().stream().map(section -> new Subject.OfSection(part.id(), section.name()));
    Stream<Subject> pins = part.pins().stream().map(pin -> Subject.of(part.ref(pin)));
    return Stream.concat(sections, pins).toList();
  }
}
