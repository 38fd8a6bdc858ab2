package org.relegend.viewer.mode.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.relegend.circuit.Kinds;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.Designator;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.MapTables;
import org.relegend.map.Part;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Subject;
import org.relegend.marking.MarkingReadings;
import org.relegend.marking.ValueReading;
import org.relegend.viewer.session.Attester;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.Click;
import org.relegend.viewer.session.MapDocument;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.PartValues;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.Target;
import org.relegend.viewer.session.TypedName;
import org.relegend.viewer.session.TypedText;

/**
 * Placing by name: the name is typed, the place clicked. After each, the next part not yet placed
 * on that picture is offered, so that a row of parts goes click by click.
 */
public final class PlaceTool implements Mode, TypedText {
  private static final int OFFERED = 8;

  private final Session session;
  private final MapDocument document;
  private final Attester hand;
  private final ChangeNotifier hub;
  private String typed = "";
  private @Nullable Designator last;

  public PlaceTool(Session session) {
    this.session = session;
    this.document = session.document();
    this.hand = session.hand();
    this.hub = session.hub();
  }

  @Override
  public String word() {
    return "place";
  }

  @Override
  public Optional<Notice.Kind> prompt() {
    return Optional.of(Notice.Kind.PROMPT_PLACE);
  }

  @Override
  public boolean marksPlaces() {
    return true;
  }

  @Override
  public void taken() {
    offerNext();
  }

  @Override
  public Optional<TypedText> typedText() {
    return Optional.of(this);
  }

  @Override
  public boolean holdsKeyboard() {
    return true;
  }

  /** Offers the first name not yet placed on the picture shown, to be placed by the next click. */
  public void offerNext() {
    session
        .desk()
        .photo()
        .map(photo -> photo.id())
        .or(() -> session.desk().page().map(page -> page.id()))
        .flatMap(this::nextUnplaced)
        .ifPresentOrElse(next -> type(next.text()), () -> type(""));
  }

  @Override
  public void click(Target target) {
    session
        .gate()
        .through(target.zones(), () -> place(target.click()).ifPresent(session.walk()::showDone));
  }

  /** The name as it is typed now; what the next click places. */
  @Override
  public String text() {
    return typed;
  }

  @Override
  public void type(String text) {
    hub.check();
    typed = text;
    hub.fire(Change.TOOL);
  }

  /** What the typed name stands for in the map, as far as it is known. */
  public Optional<Subject> target() {
    return new TypedName(document.index()).known(typed);
  }

  @Override
  public List<String> completions(String begun) {
    return completions(begun, session.desk().photo().map(Photo::id));
  }

  /** Designators that begin as typed, those not yet placed on the picture first. */
  public List<String> completions(String begun, Optional<PictureId> picture) {
    String start = begun.strip().toUpperCase(Locale.ROOT);
    Set<Subject> placed = picture.map(this::placedOn).orElse(Set.of());
    return document.map().parts().stream()
        .filter(part -> part.designator().text().toUpperCase(Locale.ROOT).startsWith(start))
        .sorted(
            Comparator.comparing((Part part) -> placed.contains(Subject.of(part.id())))
                .thenComparing(Part::designator))
        .limit(OFFERED)
        .map(part -> part.designator().text())
        .toList();
  }

  /** The first part after the one placed last that isn't on the picture yet. */
  public Optional<Designator> nextUnplaced(PictureId picture) {
    Set<Subject> placed = placedOn(picture);
    Optional<BoardId> board = document.map().picture(picture).flatMap(Picture::shownBoard);
    List<Designator> missing =
        document.map().parts().stream()
            .filter(part -> board.isEmpty() || board.get().equals(part.board()))
            .filter(part -> !placed.contains(Subject.of(part.id())))
            .map(Part::designator)
            .sorted()
            .toList();
    Designator after = last;
    return missing.stream()
        .filter(designator -> after == null || designator.compareTo(after) > 0)
        .findFirst()
        .or(() -> missing.stream().findFirst());
  }

  private Set<Subject> placedOn(PictureId picture) {
    return document.map().placements().stream()
        .filter(placement -> placement.picture().equals(picture))
        .map(Placement::subject)
        .collect(Collectors.toSet());
  }

  /** Places what is typed at the click; tells what was placed. */
  public Optional<Subject> place(Click click) {
    if (typed.isBlank()) {
      hub.say(Notice.Kind.NO_NAME_TYPED);
      return Optional.empty();
    }
    Optional<TypedName.Meaning> meaning = meaning(typed, click.picture());
    if (meaning.isEmpty()) {
      return placeWithValue(click);
    }
    Subject subject = meaning.get().subject();
    List<Edit> steps = new ArrayList<>(meaning.get().additions());
    steps.add(MapTables.PLACEMENTS.put(placement(click, subject)));
    if (!document.apply(named(subject, steps))) {
      return Optional.empty();
    }
    placed(subject, click.picture());
    boolean isNew = !meaning.get().additions().isEmpty();
    hub.say(isNew ? Notice.Kind.PLACED_NEW : Notice.Kind.PLACED, document.map().nameOf(subject));
    return Optional.of(subject);
  }

  /** "R3 4k7" names a part and tells its value: both are noted at once. */
  private Optional<Subject> placeWithValue(Click click) {
    String[] words = typed.strip().split("\\s+", 2);
    Optional<TypedName.Meaning> meaning =
        words.length < 2 ? Optional.empty() : meaning(words[0], click.picture());
    Optional<Part> part = meaning.flatMap(this::partMeant);
    if (part.isEmpty()) {
      hub.say(Notice.Kind.NOT_FOUND, typed);
      return Optional.empty();
    }
    String value = words[1];
    if (value.chars().allMatch(Character::isDigit)) {
      hub.say(Notice.Kind.PIN_OR_VALUE, words[0], value);
      return Optional.empty();
    }
    MarkingReadings<ValueReading> read = PartValues.read(part.get(), value);
    if (read.outcome() != MarkingReadings.Outcome.READ) {
      hub.say(Notice.Kind.NO_VALUE, words[0], value, read.reason());
      return Optional.empty();
    }
    Subject subject = Subject.of(part.get().id());
    List<Edit> steps =
        List.of(
            MapTables.PARTS.put(part.get().withValue(value)),
            MapTables.PLACEMENTS.put(placement(click, subject)));
    if (!document.apply(named(subject, steps))) {
      return Optional.empty();
    }
    placed(subject, click.picture());
    String was = part.get().value();
    boolean other = !was.isEmpty() && !was.equals(value);
    String name = document.map().nameOf(subject);
    if (other) {
      hub.say(Notice.Kind.PLACED_VALUE_CHANGED, name, value, was);
    } else {
      hub.say(Notice.Kind.PLACED_VALUE, name, value);
    }
    return Optional.of(subject);
  }

  /** The part that is meant, known or new; a name without class letters is none. */
  private Optional<Part> partMeant(TypedName.Meaning meaning) {
    Optional<Part> added =
        MapTables.PARTS.putBy(meaning.additions()).stream()
            .filter(part -> meaning.subject().equals(Subject.of(part.id())))
            .filter(part -> !Kinds.standard().possible(part.designator()).isEmpty())
            .findFirst();
    return meaning.subject() instanceof Subject.OfPart known && meaning.additions().isEmpty()
        ? document.map().part(known.part())
        : added;
  }

  public Optional<TypedName.Meaning> meaning(String name, PictureId picture) {
    BoardMap map = document.map();
    BoardId board =
        map.picture(picture)
            .flatMap(Picture::shownBoard)
            .or(() -> map.boards().stream().findFirst().map(found -> found.id()))
            .orElseGet(() -> new BoardId("main"));
    return new TypedName(document.index()).meant(name, board);
  }

  /** Offers the next name. */
  public void placed(Subject subject, PictureId picture) {
    if (subject instanceof Subject.OfPart part) {
      document.map().part(part.part()).ifPresent(found -> last = found.designator());
    }
    type(nextUnplaced(picture).map(Designator::text).orElse(""));
  }

  /** A net may have many labels on a picture; anything else one place, which moves. */
  private Placement placement(Click click, Subject subject) {
    BoardMap map = document.map();
    int ordinal = 1;
    if (subject instanceof Subject.OfNet) {
      while (map.placements().has(new Placement.Key(click.picture(), subject, ordinal))) {
        ordinal++;
      }
    }
    Placement fresh =
        new Placement(
            click.picture(), subject, ordinal, click.at(), List.of(), List.of(hand.attests()));
    return map.placements()
        .find(fresh.key())
        .map(known -> known.movedTo(click.at(), hand.attests()))
        .orElse(fresh);
  }

  private Edit named(Subject subject, List<Edit> steps) {
    return steps.size() == 1
        ? steps.get(0)
        : new EditGroup("Place " + nameAfter(subject, steps), steps);
  }

  private String nameAfter(Subject subject, List<Edit> steps) {
    BoardMap map = document.map();
    return map.with(MapTables.PARTS, map.parts().withAll(MapTables.PARTS.putBy(steps)))
        .nameOf(subject);
  }
}
