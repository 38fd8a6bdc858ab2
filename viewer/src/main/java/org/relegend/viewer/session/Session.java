package org.relegend.viewer.session;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.relegend.map.BoardMap;
import org.relegend.map.Box;
import org.relegend.map.EditHistory;
import org.relegend.map.PictureId;
import org.relegend.map.Subject;
import org.relegend.viewer.work.OwnerThread;

/**
 * One sitting at one map: the document, what is shown and chosen, the gate before hazard zones, and
 * the mode that is current. What a mode does stands in its own room.
 */
public final class Session {
  /** From so much larger than with the whole picture in view, one looks at a place of it. */
  private static final double NEAR = 1.5;

  private final ChangeNotifier hub;
  private final MapDocument document;
  private final ShownPictures desk;
  private final Selection selection;
  private final HazardGate gate;
  private final Attester hand;
  private final QuestionQueue questions;
  private final Navigator looks;
  private final Walk walk;
  private final List<Room> rooms = new ArrayList<>();
  private Mode mode;

  /**
   * Begins with nothing chosen, in the first of the modes.
   *
   * @param history of the open map; may hold edits already that can be undone
   * @param owner the thread that all calls must come from
   * @param clock tells the time of each placement and join
   * @param rooms make one room each; at least one is a mode
   */
  public Session(
      EditHistory history,
      OwnerThread owner,
      Clock clock,
      List<? extends Function<Session, ? extends Room>> rooms) {
    hub = new ChangeNotifier(owner);
    document = new MapDocument(history, hub);
    desk = new ShownPictures(document, hub);
    gate = new HazardGate(hub);
    selection = new Selection(document, desk, gate, hub);
    hand = new Attester(hub, clock);
    questions = new QuestionQueue(hub);
    looks = new Navigator(desk);
    walk = new Walk(this);
    rooms.forEach(room -> this.rooms.add(room.apply(this)));
    mode = room(Mode.class);
    hub.add(this::follow);
  }

  private void follow(Change change) {
    if (change == Change.MAP) {
      desk.refresh();
    }
    if (change == Change.MAP || change == Change.PICTURES) {
      selection.update();
    } else if (change == Change.TWINS || change == Change.JOB) {
      selection.refresh(); // what was read may have made a place dangerous
    }
    rooms.forEach(room -> room.follow(change));
  }

  /** Hears of every change, on the owner's thread. */
  public void listen(Consumer<Change> listener) {
    hub.add(listener);
  }

  /** Hears of every place that is to be brought into view. */
  public void onLook(Consumer<ViewRequest> listener) {
    looks.add(listener);
  }

  /** Who is told of changes and of what is to be said. */
  public ChangeNotifier hub() {
    return hub;
  }

  public MapDocument document() {
    return document;
  }

  public BoardMap map() {
    return document.map();
  }

  public ShownPictures desk() {
    return desk;
  }

  public Selection selection() {
    return selection;
  }

  public HazardGate gate() {
    return gate;
  }

  public Attester hand() {
    return hand;
  }

  public QuestionQueue questions() {
    return questions;
  }

  public Navigator looks() {
    return looks;
  }

  /** Choosing by name, and walking along the strip. */
  public Walk walk() {
    return walk;
  }

  /** Which hazard zones come into view when something is chosen. */
  /**
   * The view of a picture is moved by hand, by wheel, drag or key: done at once, or when the
   * cautions of what comes into the middle of it were read; never, if turned back.
   *
   * @param visible what would be in view
   * @param closeness how much larger it would be than with the whole picture in view
   */
  public void approach(PictureId picture, Box visible, double closeness, Runnable then) {
    hub.check();
    if (closeness < NEAR) {
      then.run();
      return;
    }
    Box middle = visible.grown(-Math.min(visible.width(), visible.height()) / 4);
    gate.through(Set.copyOf(PointerHits.zonesIn(document.watched(), picture, middle)), then);
  }

  /** Whether a part of a picture may be shown magnified now: no caution of it is unread. */
  public boolean mayMagnify(PictureId picture, Box shown) {
    return gate.isOpen(Set.copyOf(PointerHits.zonesIn(document.watched(), picture, shown)));
  }

  public HazardExposure exposure() {
    return new HazardExposure(document, desk);
  }

  /**
   * The room of this kind.
   *
   * @throws IllegalArgumentException where the session has none
   */
  public <R extends Room> R room(Class<R> kind) {
    return rooms.stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no room " + kind.getName()));
  }

  /** All modes, in the order they are offered; the first is the one to rest in. */
  public List<Mode> modes() {
    return rooms.stream().filter(Mode.class::isInstance).map(Mode.class::cast).toList();
  }

  public Mode mode() {
    return mode;
  }

  /** Whether this mode is current. */
  public boolean isIn(Class<? extends Mode> kind) {
    return kind.isInstance(mode);
  }

  /** Whether nothing special was taken in hand. */
  public boolean isAtRest() {
    return mode.equals(modes().get(0));
  }

  /** Takes the first mode in hand again. */
  public void rest() {
    take(modes().get(0));
  }

  public void take(Class<? extends Mode> kind) {
    take(room(kind));
  }

  /** Takes a mode in hand; what the other had half done is dropped. */
  public void take(Mode taken) {
    hub.check();
    hub.moveOn();
    rooms.forEach(Room::modeTaken);
    drop();
    mode = taken.begin() ? taken : modes().get(0);
    if (!mode.isOnTwoPictures()) {
      desk.unface();
    }
    taken.taken();
    hub.fire(Change.TOOL);
    if (mode.equals(taken)) {
      taken.prompt().ifPresent(hub::say);
    }
  }

  private void drop() {
    questions.dropAll();
    rooms.forEach(Room::drop);
  }

  /** One step back: drops the question, else what is half done, else the mode, else the choice. */
  public void back() {
    hub.check();
    hub.moveOn();
    if (questions.asked().isPresent()) {
      questions.done();
    } else if (!mode.back()) {
      leave();
    }
  }

  private void leave() {
    if (!isAtRest() || desk.isComparing()) {
      rest();
    } else {
      selection.clear();
    }
  }

  /** The technician clicked on a picture. */
  public void click(Click click) {
    hub.check();
    hub.moveOn();
    if (mode.marksPlaces() && document.isOwn(click.picture())) {
      hub.say(Notice.Kind.UNIT_PHOTO);
    } else {
      mode.click(Target.of(click, document, exposure()));
    }
  }

  /** Chooses by name, from the find field or the like, and goes near it on both pictures. */
  public void choose(Subject subject) {
    walk.choose(subject, Optional.empty());
  }

  /** The last thing said. */
  public Optional<Notice> notice() {
    return hub.last();
  }

  /** What waits for an answer. */
  public Optional<Question> question() {
    return questions.asked();
  }

  public void undo() {
    if (rooms.stream().noneMatch(Room::undo)) {
      step(document::undo);
    }
  }

  public void redo() {
    if (rooms.stream().noneMatch(Room::redo)) {
      step(document::redo);
    }
  }

  private void step(Runnable step) {
    BoardMap before = map();
    drop();
    step.run();
    walk.showChanged(before);
  }
}
