package org.relegend.viewer.mode.zone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.map.ZoneId;
import org.relegend.viewer.session.Attester;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.Click;
import org.relegend.viewer.session.MapDocument;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Question;
import org.relegend.viewer.session.QuestionQueue;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.Target;

/**
 * Drawing hazard zones: corner by corner, closed at the first corner or by a key; then its kind.
 */
public final class ZoneTool implements Mode {
  /** An outline is closed: what threatens inside it? */
  public record WhichHazard(PictureId picture, List<Point> outline) implements Question {
    public WhichHazard {
      outline = List.copyOf(outline);
    }
  }

  /** What threatens inside a hazard zone that is there already, and what is noted of it? */
  public record ChangeZone(ZoneId zone, HazardZone.Kind kind, String note) implements Question {}

  /** A hazard zone is to be removed from the map. */
  public record RemoveZone(ZoneId zone) implements Question {}

  private final MapDocument document;
  private final Attester hand;
  private final ChangeNotifier hub;
  private final QuestionQueue questions;
  private @Nullable PictureId picture;
  private final List<Point> corners = new ArrayList<>();

  public ZoneTool(Session session) {
    this.document = session.document();
    this.hand = session.hand();
    this.hub = session.hub();
    this.questions = session.questions();
  }

  @Override
  public String word() {
    return "zone";
  }

  @Override
  public Optional<Notice.Kind> prompt() {
    return Optional.of(Notice.Kind.PROMPT_ZONE);
  }

  @Override
  public boolean marksPlaces() {
    return true;
  }

  @Override
  public boolean enter() {
    close();
    return true;
  }

  @Override
  public void click(Target target) {
    click(target.click());
  }

  /** What threatens inside the outline just closed. */
  public void answer(WhichHazard question, HazardZone.Kind kind, String note) {
    questions.answered();
    draw(question, kind, note);
  }

  /** What threatens in the zone, and its note. */
  public void answer(ChangeZone question, HazardZone.Kind kind, String note) {
    questions.answered();
    change(question.zone(), kind, note);
  }

  /** The zone is to go. */
  public void answer(RemoveZone question) {
    questions.answered();
    remove(question.zone());
  }

  /** Asks before a zone is removed. */
  public void askRemove(ZoneId zone) {
    hub.check();
    hub.moveOn();
    questions.ask(new RemoveZone(zone));
  }

  /** The corners set so far on a picture. */
  public List<Point> corners(PictureId on) {
    return on.equals(picture) ? List.copyOf(corners) : List.of();
  }

  @Override
  public void drop() {
    picture = null;
    corners.clear();
  }

  private void click(Click click) {
    if (!click.picture().equals(picture)) {
      drop();
      picture = click.picture();
    }
    boolean atFirst =
        corners.size() >= 3 && corners.get(0).distance(click.at()) <= 1.5 * click.reach();
    if (atFirst) {
      close();
    } else if (corners.isEmpty() || !corners.get(corners.size() - 1).equals(click.at())) {
      corners.add(click.at());
      hub.say(Notice.Kind.ZONE_CORNER, corners.size());
      hub.fire(Change.TOOL);
    }
  }

  /** Takes the last corner back; tells whether there was one. */
  @Override
  public boolean back() {
    if (corners.isEmpty()) {
      return false;
    }
    corners.remove(corners.size() - 1);
    hub.fire(Change.TOOL);
    return true;
  }

  /** Closes the outline and asks what threatens inside. */
  public void close() {
    hub.check();
    PictureId on = picture;
    if (on == null || corners.size() < 3) {
      hub.say(Notice.Kind.ZONE_TOO_SMALL);
      return;
    }
    questions.ask(new WhichHazard(on, corners));
  }

  /** Puts the zone into the map. */
  public void draw(WhichHazard outline, HazardZone.Kind kind, String note) {
    ZoneId id = freshId(document.map(), kind);
    HazardZone zone =
        new HazardZone(
            id, outline.picture(), kind, outline.outline(), note, List.of(hand.attests()));
    if (document.apply(MapTables.ZONES.put(zone))) {
      drop();
      hub.say(Notice.Kind.ZONE_DRAWN, document.map().nameOf(zone));
    }
  }

  /** Asks what a zone is to be instead. */
  public void askChange(ZoneId zone) {
    hub.check();
    hub.moveOn();
    document
        .map()
        .zones()
        .find(zone)
        .ifPresent(found -> questions.ask(new ChangeZone(zone, found.kind(), found.note())));
  }

  /** Gives a zone another kind or note; its outline stays. */
  public void change(ZoneId zone, HazardZone.Kind kind, String note) {
    document
        .map()
        .zones()
        .find(zone)
        .filter(found -> found.kind() != kind || !found.note().equals(note))
        .ifPresent(found -> put(found, kind, note));
  }

  private void put(HazardZone before, HazardZone.Kind kind, String note) {
    HazardZone zone =
        new HazardZone(
            before.id(), before.picture(), kind, before.outline(), note, List.of(hand.attests()));
    if (document.apply(MapTables.ZONES.put(zone))) {
      hub.say(Notice.Kind.ZONE_CHANGED, document.map().nameOf(zone));
    }
  }

  /** Takes a zone out of the map. */
  public void remove(ZoneId zone) {
    String name = document.map().zones().find(zone).map(document.map()::nameOf).orElse("");
    if (document.apply(MapTables.ZONES.remove(zone))) {
      hub.say(Notice.Kind.ZONE_REMOVED, name);
    }
  }

  /** Says why no zone of that picture can be changed: it was drawn elsewhere, or none is there. */
  public void sayNoneDrawn(PictureId on) {
    hub.check();
    document.carrier().zonesOn(on).stream()
        .findFirst()
        .map(carried -> document.map().nameOf(carried.source()))
        .ifPresentOrElse(
            name -> hub.say(Notice.Kind.ZONE_CARRIED, name), () -> hub.say(Notice.Kind.NO_ZONE));
  }

  /** The first number that no zone of the kind has. */
  public static ZoneId freshId(BoardMap map, HazardZone.Kind kind) {
    int number = 1;
    while (map.zones().has(new ZoneId(kind.word() + "-" + number))) {
      number++;
    }
    return new ZoneId(kind.word() + "-" + number);
  }

  /** A corner of a zone was dragged elsewhere. */
  public void moveCorner(ZoneId zone, int corner, Point to) {
    document.map().zones().find(zone).ifPresent(found -> reshape(found, corner, Optional.of(to)));
  }

  private void reshape(HazardZone zone, int corner, Optional<Point> to) {
    List<Point> changed = new ArrayList<>(zone.outline());
    to.ifPresent(point -> changed.set(corner, point));
    document.apply(
        MapTables.ZONES.put(
            new HazardZone(
                zone.id(),
                zone.picture(),
                zone.kind(),
                changed,
                zone.note(),
                List.of(hand.attests()))));
  }
}
