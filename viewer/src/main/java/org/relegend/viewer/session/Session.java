package org.relegend.viewer.session;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.relegend.bench.State;
import org.relegend.check.Finding;
import org.relegend.map.BoardMap;
import org.relegend.map.EditHistory;
import org.relegend.map.HazardZone;
import org.relegend.map.PictureId;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.map.ZoneId;
import org.relegend.table.NetClash;
import org.relegend.viewer.work.OwnerThread;

/** One sitting at one map. Everything that a key or a click does to it begins here. */
public final class Session {
  private final Hub hub;
  private final Document document;
  private final Desk desk;
  private final Selection selection;
  private final Gate gate;
  private final Hand hand;
  private final Questions questions;
  private final Placing placing;
  private final Pinning pinning;
  private final Tracing tracing;
  private final Outlining outlining;
  private final Pairing pairing;
  private final Measuring measuring;
  private final Squaring squaring;
  private final Corrections corrections;
  private final Entries entries;
  private final Looks looks;
  private final TwinJump twinJump;
  private final BenchWork bench;
  private final UnitPhotos unitPhotos;
  private final Conditions conditions;
  private final Twinning twinning;
  private final Ghosts ghosts;
  private final Comparing comparing;
  private final Pointing pointing;
  private Tool tool = Tool.LOOK;

  /**
   * Begins with nothing chosen.
   *
   * @param history of the open map; may hold edits already that can be undone
   * @param owner the thread that all calls must come from
   * @param clock tells the time of each placement and join
   */
  public Session(EditHistory history, OwnerThread owner, Clock clock) {
    hub = new Hub(owner);
    document = new Document(history, hub);
    desk = new Desk(document, hub);
    gate = new Gate(hub);
    selection = new Selection(document, desk, gate, hub);
    hand = new Hand(hub, clock);
    questions = new Questions(hub);
    placing = new Placing(document, hand, hub);
    pinning = new Pinning(document, placing, hand, hub);
    tracing = new Tracing(document, hand, hub, questions);
    outlining = new Outlining(document, hand, hub, questions);
    bench = new BenchWork(document, selection, hand, hub, clock);
    unitPhotos = new UnitPhotos(document, bench, hub);
    pairing = new Pairing(document, desk, hand, unitPhotos, hub);
    measuring = new Measuring(document, hub, questions);
    squaring = new Squaring(document, desk, hand, hub, questions, measuring);
    corrections = new Corrections(document, selection, hand, hub);
    entries = new Entries(document, selection, bench, questions, hub);
    looks = new Looks(desk);
    twinJump = new TwinJump(this, hub, looks);
    conditions = new Conditions(bench, selection, questions, hub);
    twinning = new Twinning(document, selection, hand, hub, questions);
    ghosts = new Ghosts(document, desk, gate, hand, hub, looks, selection);
    comparing = new Comparing(this, hub);
    pointing = new Pointing(this, hub, looks);
    hub.add(this::follow);
  }

  private void follow(Change change) {
    if (change == Change.MAP) {
      desk.settle();
    }
    if (change == Change.MAP || change == Change.PICTURES) {
      selection.settle();
    } else if (change == Change.TWINS) {
      selection.refresh();
    } else if (change == Change.CHOICE || change == Change.CURSOR) {
      comparing.settle();
    }
  }

  /** Hears of every change, on the owner's thread. */
  public void listen(Consumer<Change> listener) {
    hub.add(listener);
  }

  /** Hears of every place that is to be brought into view. */
  public void onLook(Consumer<Look> listener) {
    looks.add(listener);
  }

  public Document document() {
    return document;
  }

  public BoardMap map() {
    return document.map();
  }

  public Desk desk() {
    return desk;
  }

  public Selection selection() {
    return selection;
  }

  public Gate gate() {
    return gate;
  }

  public Hand hand() {
    return hand;
  }

  public Placing placing() {
    return placing;
  }

  public Pinning pinning() {
    return pinning;
  }

  public Tracing tracing() {
    return tracing;
  }

  public Outlining outlining() {
    return outlining;
  }

  public Pairing pairing() {
    return pairing;
  }

  public Measuring measuring() {
    return measuring;
  }

  public Squaring squaring() {
    return squaring;
  }

  public Corrections corrections() {
    return corrections;
  }

  /** What the map says of parts and nets, to be put right. */
  public Entries entries() {
    return entries;
  }

  /** The job that lies over the map. */
  public BenchWork bench() {
    return bench;
  }

  public Conditions conditions() {
    return conditions;
  }

  /** Photos of this very unit. */
  public UnitPhotos unitPhotos() {
    return unitPhotos;
  }

  /** Saying twins, and what follows from those that are known. */
  public Twinning twinning() {
    return twinning;
  }

  /** Where unplaced twins should lie. */
  public Ghosts ghosts() {
    return ghosts;
  }

  /** Two channels side by side. */
  public Comparing comparing() {
    return comparing;
  }

  /** The condition of the part asked about. */
  public void answer(
      Question.WhichCondition question, State state, String fitted, String dateCode, String note) {
    hub.check();
    hub.moveOn();
    questions.done();
    conditions.note(question.part(), state, fitted, dateCode, note);
  }

  /** Says that something was printed. */
  public void printed(String file, int pages) {
    hub.say(Notice.Kind.PRINTED, file, pages);
  }

  /** The last thing said. */
  public Optional<Notice> notice() {
    return hub.last();
  }

  /** What waits for an answer. */
  public Optional<Question> question() {
    return questions.asked();
  }

  public Tool tool() {
    return tool;
  }

  /** Takes a tool in hand; what the other had half done is dropped. */
  public void take(Tool taken) {
    hub.check();
    hub.moveOn();
    comparing.end();
    dropHalfDone();
    tool = begins(taken) ? taken : Tool.LOOK;
    if (tool != Tool.LINE_UP) {
      desk.unface();
    }
    if (taken.takesName()) {
      desk.photo()
          .map(photo -> photo.id())
          .or(() -> desk.page().map(page -> page.id()))
          .flatMap(placing::nextUnplaced)
          .ifPresentOrElse(next -> placing.type(next.text()), () -> placing.type(""));
    }
    hub.fire(Change.TOOL);
    if (tool == taken) {
      taken.prompt().ifPresent(hub::say);
    }
  }

  /** Lays two pages side by side, to line them up: another scan, or a better one. */
  public void lineUpPages() {
    hub.check();
    take(Tool.LOOK);
    if (pairing.layPages()) {
      take(Tool.LINE_UP);
    }
  }

  private boolean begins(Tool taken) {
    return switch (taken) {
      case LINE_UP -> pairing.begin();
      case STRAIGHTEN -> squaring.begin();
      default -> true;
    };
  }

  private void dropHalfDone() {
    questions.dropAll();
    pinning.reset();
    tracing.reset();
    outlining.reset();
    pairing.reset();
    measuring.reset();
    squaring.reset();
  }

  /** One step back: drops the question, else what is half done, else the tool, else the choice. */
  public void back() {
    hub.check();
    hub.moveOn();
    if (questions.asked().isPresent()) {
      questions.done();
    } else if (tool == Tool.ZONE && outlining.back()
        || tool == Tool.LINE_UP && pairing.back()
        || tool == Tool.STRAIGHTEN && squaring.back()) {
      return;
    } else if (tool != Tool.LOOK || comparing.isOn()) {
      take(Tool.LOOK);
    } else {
      selection.clear();
    }
  }

  /** The technician clicked on a picture. */
  public void click(Click click) {
    hub.check();
    hub.moveOn();
    pointing.click(click);
  }

  Exposure exposure() {
    return new Exposure(document, desk);
  }

  /** Chooses what was just worked on; its cards may show places in zones not yet cautioned of. */
  void showDone(Subject subject) {
    gate.through(exposure().of(subject), () -> selection.choose(subject, List.of()));
  }

  void trace(Optional<Placement> hit) {
    if (hit.isEmpty()) {
      hub.say(Notice.Kind.NOTHING_HERE);
      return;
    }
    tracing.add(hit.get());
    showTraced();
  }

  private void showTraced() {
    tracing.net().ifPresent(net -> showDone(Subject.of(net.id())));
  }

  /** A pin named by the question which one is meant. */
  public void answer(PinRef pin) {
    hub.check();
    hub.moveOn();
    questions.done();
    tracing.add(pin);
    showTraced();
  }

  /** The two nets are one; or the pins are moved; or neither. */
  public void answer(Question.PinsTaken question, NetClash.Choice choice) {
    hub.check();
    hub.moveOn();
    questions.done();
    tracing.settle(question.clash(), choice);
    showTraced();
  }

  /** A line typed while tracing. */
  public void traceLine(String line) {
    hub.check();
    hub.moveOn();
    tracing.typed(line);
    showTraced();
  }

  /** What threatens inside the outline just closed. */
  public void answer(Question.WhichHazard question, HazardZone.Kind kind, String note) {
    hub.check();
    hub.moveOn();
    questions.done();
    outlining.draw(question, kind, note);
  }

  /** How far the two points are apart, in millimetres. */
  public void answer(Question.HowFar question, String millimetres) {
    hub.check();
    hub.moveOn();
    questions.done();
    measuring.answer(question, millimetres);
  }

  /** How wide and high the board is, in millimetres. */
  public void answer(Question.HowLarge question, String size) {
    hub.check();
    hub.moveOn();
    questions.done();
    squaring.answer(question, size);
  }

  /** Asks what a zone is to be instead. */
  public void changeZone(ZoneId zone) {
    hub.check();
    hub.moveOn();
    outlining.askChange(zone);
  }

  /** What threatens in the zone, and its note. */
  public void answer(Question.ChangeZone question, HazardZone.Kind kind, String note) {
    hub.check();
    hub.moveOn();
    questions.done();
    outlining.change(question.zone(), kind, note);
  }

  /** Asks before a zone is removed. */
  public void removeZone(ZoneId zone) {
    hub.check();
    hub.moveOn();
    questions.ask(new Question.RemoveZone(zone));
  }

  /** The zone is to go. */
  public void answer(Question.RemoveZone question) {
    hub.check();
    hub.moveOn();
    questions.done();
    outlining.remove(question.zone());
  }

  /** The part or net is to go. */
  public void answer(Question.RemoveEntry question) {
    hub.check();
    questions.done();
    entries.remove(question.subject());
  }

  /** Puts right what a finding is about, as one edit that can be undone. */
  public void mend(Finding finding) {
    hub.check();
    Mending.edit(finding, map(), hand.attests())
        .ifPresentOrElse(document::apply, () -> hub.say(Notice.Kind.NOTHING_TO_MEND));
  }

  /** A corner of a zone was dragged. */
  public void moveCorner(ZoneId zone, int corner, Point to) {
    outlining.moveCorner(zone, corner, to);
  }

  /** Chooses by name, from the find field or the like, and goes near it on both pictures. */
  public void choose(Subject subject) {
    choose(subject, Optional.empty());
  }

  /** As {@link #choose(Subject)}, but on this picture, if it is placed there. */
  public void choose(Subject subject, Optional<PictureId> on) {
    hub.check();
    hub.moveOn();
    gate.through(
        exposure().of(subject),
        () -> {
          on.ifPresent(desk::show);
          selection.choose(subject, List.of());
          Optional<Card> card = selection.card();
          card.ifPresent(shown -> looks.closeTo(shown, subject, document.index()));
          if (card.filter(shown -> shown.page().or(shown::photo).isPresent()).isEmpty()) {
            hub.say(Notice.Kind.NOT_PLACED_YET, map().nameOf(subject));
          }
        });
  }

  /** Whether the map has it. */
  public boolean knows(Subject subject) {
    return Subjects.isIn(map(), subject);
  }

  /** Chooses what was chosen in an earlier sitting, with the card walked to; then does the rest. */
  public void chooseAgain(Subject subject, int card, Runnable then) {
    hub.check();
    gate.through(
        exposure().of(subject),
        () -> {
          selection.choose(subject, List.of());
          selection.walkTo(card);
          then.run();
        });
  }

  /** Walks along the strip by so many cards; both pictures follow. */
  public void walk(int cards) {
    walkTo(selection.cursor() + cards);
  }

  /** Walks to a card of the strip; both pictures follow. */
  public void walkTo(int card) {
    hub.check();
    hub.moveOn();
    List<Card> cards = selection.strip().cards();
    if (cards.isEmpty()) {
      return;
    }
    int target = Math.max(0, Math.min(cards.size() - 1, card));
    gate.through(
        Set.copyOf(cards.get(target).zones()),
        () -> {
          selection.walkTo(target);
          looks.at(cards.get(target));
        });
  }

  /** Opens what the card walked to stands for: its own node or part. */
  public void open() {
    selection.card().ifPresent(card -> choose(card.subject()));
  }

  /** Jumps to the twin of what the eye is on, at the same spot and zoom; from there, back. */
  public void twin() {
    hub.check();
    hub.moveOn();
    twinJump.jump();
  }

  /**
   * Lays the photo of the board's other side on the desk, with the same spot in view.
   *
   * @param centre of the view of the photo; what is chosen there goes before it
   */
  public void flip(Point centre) {
    hub.check();
    hub.moveOn();
    comparing.end();
    new TurnOver(this, hub, looks).over(centre);
  }

  /** Lays this unit's own photo of the same side on the desk, with the same spot in view; back. */
  public void flipToUnit(Point centre) {
    hub.check();
    hub.moveOn();
    new TurnOver(this, hub, looks).toUnit(centre);
  }

  /** Marks all placements of a picture between two corners, besides or instead of those marked. */
  public void markWithin(PictureId picture, Point a, Point b, boolean more) {
    pointing.markWithin(picture, a, b, more);
  }

  /** A drag begins there: tells what would be dragged, which is marked then, if it wasn't. */
  public boolean grab(Click click) {
    return pointing.grab(click);
  }

  public void undo() {
    if (!bench.undo()) {
      stepThrough(document::undo);
    }
  }

  public void redo() {
    if (!bench.redo()) {
      stepThrough(document::redo);
    }
  }

  private void stepThrough(Runnable step) {
    BoardMap before = map();
    dropHalfDone();
    step.run();
    Changed.place(before, map())
        .ifPresent(
            place ->
                gate.through(
                    exposure().ofPlace(place.subject()), () -> looks.at(Optional.of(place))));
  }
}
