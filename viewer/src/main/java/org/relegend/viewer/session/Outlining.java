package org.relegend.viewer.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.HazardZone;
import org.relegend.map.PictureEdits;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.map.ZoneId;

/**
 * Drawing hazard zones: corner by corner, closed at the first corner or by a key; then its kind.
 */
public final class Outlining {
  private final Document document;
  private final Hand hand;
  private final Hub hub;
  private final Questions questions;
  private @Nullable PictureId picture;
  private final List<Point> corners = new ArrayList<>();

  Outlining(Document document, Hand hand, Hub hub, Questions questions) {
    this.document = document;
    this.hand = hand;
    this.hub = hub;
    this.questions = questions;
  }

  /** The corners set so far on a picture. */
  public List<Point> corners(PictureId on) {
    return on.equals(picture) ? List.copyOf(corners) : List.of();
  }

  void reset() {
    picture = null;
    corners.clear();
  }

  void click(Click click) {
    if (!click.picture().equals(picture)) {
      reset();
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
  boolean back() {
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
    questions.ask(new Question.WhichHazard(on, corners));
  }

  /** Puts the zone into the map. */
  void draw(Question.WhichHazard outline, HazardZone.Kind kind, String note) {
    ZoneId id = freshId(document.map(), kind);
    HazardZone zone =
        new HazardZone(
            id, outline.picture(), kind, outline.outline(), note, List.of(hand.attests()));
    if (document.apply(new PictureEdits.PutZone(zone))) {
      reset();
      hub.say(Notice.Kind.ZONE_DRAWN, document.map().nameOf(zone));
    }
  }

  /** Asks what a zone is to be instead. */
  void askChange(ZoneId zone) {
    document
        .map()
        .zones()
        .find(zone)
        .ifPresent(
            found -> questions.ask(new Question.ChangeZone(zone, found.kind(), found.note())));
  }

  /** Gives a zone another kind or note; its outline stays. */
  void change(ZoneId zone, HazardZone.Kind kind, String note) {
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
    if (document.apply(new PictureEdits.PutZone(zone))) {
      hub.say(Notice.Kind.ZONE_CHANGED, document.map().nameOf(zone));
    }
  }

  /** Takes a zone out of the map. */
  void remove(ZoneId zone) {
    String name = document.map().zones().find(zone).map(document.map()::nameOf).orElse("");
    if (document.apply(new PictureEdits.RemoveZone(zone))) {
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
  static ZoneId freshId(BoardMap map, HazardZone.Kind kind) {
    int number = 1;
    while (map.zones().has(new ZoneId(kind.word() + "-" + number))) {
      number++;
    }
    return new ZoneId(kind.word() + "-" + number);
  }

  /** A corner of a zone was dragged elsewhere. */
  void moveCorner(ZoneId zone, int corner, Point to) {
    document.map().zones().find(zone).ifPresent(found -> reshape(found, corner, Optional.of(to)));
  }

  private void reshape(HazardZone zone, int corner, Optional<Point> to) {
    List<Point> changed = new ArrayList<>(zone.outline());
    to.ifPresent(point -> changed.set(corner, point));
    document.apply(
        new PictureEdits.PutZone(
            new HazardZone(
                zone.id(),
                zone.picture(),
                zone.kind(),
                changed,
                zone.note(),
                List.of(hand.attests()))));
  }
}
