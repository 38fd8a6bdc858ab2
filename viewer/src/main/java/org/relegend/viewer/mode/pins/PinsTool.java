package org.relegend.viewer.mode.pins;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.lineup.PackageOutline;
import org.relegend.lineup.PackageShape;
import org.relegend.lineup.Packages;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.MapTables;
import org.relegend.map.NameRules;
import org.relegend.map.Part;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.viewer.mode.place.PlaceTool;
import org.relegend.viewer.session.Attester;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.Click;
import org.relegend.viewer.session.MapDocument;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.Target;
import org.relegend.viewer.session.TypedName;
import org.relegend.viewer.session.TypedText;

/**
 * Placing all pins of a part: on a photo by clicking its first and its last pin, the package's
 * outline gives the rest; on a page, where a symbol has no such outline, pin by pin. What is typed
 * is the part's name, and behind it the package where the map can't tell: "U7 DIP-14".
 */
public final class PinsTool implements Mode {
  private final Session session;
  private final MapDocument document;
  private final PlaceTool placing;
  private final Attester hand;
  private final ChangeNotifier hub;
  private @Nullable PictureId picture;
  private @Nullable Point first;
  private int nextOnPage;

  public PinsTool(Session session) {
    this.session = session;
    this.document = session.document();
    this.placing = session.room(PlaceTool.class);
    this.hand = session.hand();
    this.hub = session.hub();
  }

  @Override
  public String word() {
    return "pins";
  }

  @Override
  public Optional<Notice.Kind> prompt() {
    return Optional.of(Notice.Kind.PROMPT_PINS);
  }

  @Override
  public boolean marksPlaces() {
    return true;
  }

  @Override
  public void taken() {
    placing.offerNext();
  }

  @Override
  public Optional<TypedText> typedText() {
    return placing.typedText();
  }

  @Override
  public void click(Target target) {
    session
        .gate()
        .through(target.zones(), () -> click(target.click()).ifPresent(session.walk()::showDone));
  }

  /** Where the first pin was clicked, on this picture; the last pin is awaited then. */
  public Optional<Point> first(PictureId on) {
    return on.equals(picture) ? Optional.ofNullable(first) : Optional.empty();
  }

  /** How the package would lie if the last pin were there. */
  public Optional<PackageOutline> preview(PictureId on, Point last) {
    return first(on)
        .filter(begun -> !begun.equals(last))
        .flatMap(
            begun -> shape().map(shape -> PackageOutline.place(shape, begun, last, sideOf(on))));
  }

  /** The package that the next two clicks place, if what is typed tells it. */
  public Optional<PackageShape> shape() {
    Optional<String> named = packageTyped();
    Optional<Part> part = part();
    return named
        .or(() -> part.map(PinsTool::likelyPackage))
        .flatMap(Packages.known()::named)
        .filter(shape -> part.filter(known -> !fits(known, shape)).isEmpty());
  }

  /** Pins that are numbered must be the package's own: six of eight don't make a smaller one. */
  private static boolean fits(Part part, PackageShape shape) {
    int size = shape.pins().size();
    boolean within =
        !isNumbered(part)
            || part.pins().stream().map(Pin::number).allMatch(number -> isUpTo(number, size));
    return part.pins().isEmpty() || part.pins().size() == size && within;
  }

  private static boolean isUpTo(String number, int size) {
    return number.length() < 5 && Integer.parseInt(number) <= size;
  }

  private static boolean isNumbered(Part part) {
    return part.pins().stream()
        .allMatch(pin -> pin.number().chars().allMatch(c -> c >= '0' && c <= '9'));
  }

  /** As they are counted on the package, whatever came first into the map. */
  private static List<Pin> counted(Part part) {
    return isNumbered(part)
        ? part.pins().stream().sorted(Comparator.comparing(Pin::number, NameRules.NATURAL)).toList()
        : part.pins();
  }

  private Optional<Part> part() {
    return new TypedName(document.index()).part(partTyped());
  }

  private String partTyped() {
    return placing.text().strip().split("\\s+", 2)[0];
  }

  private Optional<String> packageTyped() {
    String[] words = placing.text().strip().split("\\s+", 2);
    return words.length < 2 ? Optional.empty() : Optional.of(words[1]);
  }

  /** What a part of that many pins most often comes in, where its package isn't noted. */
  private static String likelyPackage(Part part) {
    if (!part.casing().isEmpty()) {
      return part.casing();
    }
    int pins = part.pins().size();
    String kind = part.kind().toLowerCase(Locale.ROOT);
    return switch (pins) {
      case 2 -> kind.startsWith("cap") ? "RADIAL" : "AXIAL";
      case 3 -> "TO-92";
      default -> (pins % 2 == 0 ? "DIP-" : "SIP-") + pins;
    };
  }

  /** Forgets a half-made package. */
  @Override
  public void drop() {
    picture = null;
    first = null;
    nextOnPage = 0;
  }

  /** One click; tells the part, when all its pins are placed. */
  private Optional<Subject> click(Click click) {
    return sideShown(click.picture()).isPresent() ? clickPhoto(click) : clickPage(click);
  }

  private Optional<Side> sideShown(PictureId on) {
    return document.map().picture(on).filter(Photo.class::isInstance).map(p -> ((Photo) p).side());
  }

  private Side sideOf(PictureId on) {
    return sideShown(on).orElse(Side.COMPONENT);
  }

  private Optional<Subject> clickPhoto(Click click) {
    Optional<PackageShape> shape = shape();
    if (partTyped().isEmpty()) {
      hub.say(Notice.Kind.NO_NAME_TYPED);
      return Optional.empty();
    }
    if (shape.isEmpty()) {
      hub.say(Notice.Kind.NO_PACKAGE, partTyped());
      return Optional.empty();
    }
    Optional<PackageOutline> outline = preview(click.picture(), click.at());
    if (outline.isEmpty()) {
      picture = click.picture();
      first = click.at();
      hub.say(Notice.Kind.FIRST_PIN, shape.get().name(), shape.get().pins().size());
      hub.fire(Change.TOOL);
      return Optional.empty();
    }
    return placing
        .meaning(partTyped(), click.picture())
        .flatMap(meaning -> lay(meaning, outline.get(), click.picture()));
  }

  private Optional<Subject> lay(TypedName.Meaning meaning, PackageOutline outline, PictureId on) {
    List<Edit> steps = new ArrayList<>(meaning.additions());
    Part part = grown(meaning, outline.shape(), steps);
    steps.add(place(on, Subject.of(part.id()), middle(outline.pins()), outline.body()));
    List<Pin> pins = counted(part);
    for (int i = 0; i < pins.size(); i++) {
      Subject pin = Subject.of(part.ref(pins.get(i)));
      steps.add(place(on, pin, outline.pins().get(i), List.of()));
    }
    String title = "Place %s with %d pins".formatted(part.designator(), part.pins().size());
    if (!document.apply(new EditGroup(title, steps))) {
      return Optional.empty();
    }
    drop();
    Subject placed = Subject.of(part.id());
    placing.placed(placed, on);
    hub.say(Notice.Kind.PLACED_PINS, part.designator(), part.pins().size());
    return Optional.of(placed);
  }

  /** The part as it will be: with the package's pins, where none are known yet. */
  private Part grown(TypedName.Meaning meaning, PackageShape shape, List<Edit> steps) {
    Part part = partOf(meaning);
    if (!part.pins().isEmpty()) {
      return part;
    }
    List<Pin> pins = new ArrayList<>();
    for (int number = 1; number <= shape.pins().size(); number++) {
      pins.add(new Pin(Integer.toString(number), ""));
    }
    Part grown = part.withPins(pins, List.of()).withCasing(shape.name());
    steps.add(MapTables.PARTS.put(grown));
    return grown;
  }

  private Part partOf(TypedName.Meaning meaning) {
    return MapTables.PARTS.putBy(meaning.additions()).stream()
        .findFirst()
        .or(() -> document.map().part(((Subject.OfPart) meaning.subject()).part()))
        .orElseThrow();
  }

  private Edit place(PictureId on, Subject subject, Point at, List<Point> outline) {
    return MapTables.PLACEMENTS.put(
        new Placement(on, subject, 1, at, outline, List.of(hand.attests())));
  }

  private static Point middle(List<Point> points) {
    double x = points.stream().mapToDouble(Point::x).average().orElseThrow();
    double y = points.stream().mapToDouble(Point::y).average().orElseThrow();
    return new Point(x, y);
  }

  private Optional<Subject> clickPage(Click click) {
    Optional<Part> part = part();
    if (part.isEmpty() || part.get().pins().isEmpty()) {
      hub.say(Notice.Kind.PINS_UNKNOWN, partTyped());
      return Optional.empty();
    }
    List<Pin> pins = part.get().pins();
    Pin pin = pins.get(Math.min(nextOnPage, pins.size() - 1));
    PinRef ref = part.get().ref(pin);
    if (!document.apply(place(click.picture(), Subject.of(ref), click.at(), List.of()))) {
      return Optional.empty();
    }
    hub.say(Notice.Kind.PLACED, document.map().nameOf(Subject.of(ref)));
    nextOnPage++;
    if (nextOnPage < pins.size()) {
      hub.fire(Change.TOOL);
      return Optional.empty();
    }
    drop();
    Subject placed = Subject.of(part.get().id());
    placing.placed(placed, click.picture());
    return Optional.of(placed);
  }

  /** The pin that the next click on a page places. */
  public Optional<Pin> nextOnPage() {
    return part().filter(p -> nextOnPage < p.pins().size()).map(p -> p.pins().get(nextOnPage));
  }
}
