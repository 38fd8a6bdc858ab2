package org.relegend.viewer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.relegend.bench.Condition;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.lineup.CarriedPlacement;
import org.relegend.map.BoardMap;
import org.relegend.map.HazardZone;
import org.relegend.map.MapIndex;
import org.relegend.map.NetId;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Subject;
import org.relegend.twin.TwinPredictions;
import org.relegend.viewer.control.OpenedPictures;
import org.relegend.viewer.mode.bench.ConditionEditor;
import org.relegend.viewer.mode.bench.OpenJob;
import org.relegend.viewer.mode.bench.UnitPhotoEditor;
import org.relegend.viewer.mode.twins.PredictedPlaces;
import org.relegend.viewer.paint.LabelOverlay;
import org.relegend.viewer.paint.Mark;
import org.relegend.viewer.paint.MarkOverlay;
import org.relegend.viewer.paint.PredictedPlaceOverlay;
import org.relegend.viewer.session.NodeCard;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SubjectQueries;

/** What is to be painted over each picture, as the session stands now. */
final class Overlays {
  private final Session session;
  private final OpenedPictures shelf;

  Overlays(Session session, OpenedPictures shelf) {
    this.session = session;
    this.shelf = shelf;
  }

  /** With the photos of this unit beside the map's. */
  BoardMap map() {
    return session.document().laid();
  }

  boolean isOfUnit(PictureId picture) {
    return session.document().isOwn(picture);
  }

  /** Close-ups of this unit that show the subject's part. */
  List<Picture> closeUps(Subject subject) {
    return SubjectQueries.partOf(subject).stream()
        .flatMap(part -> session.room(UnitPhotoEditor.class).closeUps(part).stream())
        .flatMap(id -> map().picture(id).stream())
        .toList();
  }

  /** Lays a picture on the desk. */
  void lay(Picture picture) {
    session.desk().show(picture.id());
  }

  OpenedPictures shelf() {
    return shelf;
  }

  /** All that lie on the picture, carried over or drawn there. */
  List<HazardZone> zonesOn(PictureId picture) {
    return on(session.document().seen(), picture);
  }

  /** Those that were drawn on the picture itself. */
  List<HazardZone> ownZonesOn(PictureId picture) {
    return on(map(), picture);
  }

  private static List<HazardZone> on(BoardMap map, PictureId picture) {
    return map.zones().stream().filter(zone -> zone.picture().equals(picture)).toList();
  }

  /** What was carried over there, if nobody placed it. */
  Optional<CarriedPlacement> carried(Placement placement) {
    return session.document().carried(placement.key());
  }

  /** A placement as it is painted, under the name that people know. */
  Mark mark(Placement placement, Mark.Emphasis emphasis) {
    Mark mark =
        new Mark(
            placement.subject(),
            placement.at(),
            placement.outline(),
            label(placement.subject(), emphasis),
            placement.best(),
            emphasis);
    return carried(placement).map(found -> mark.carriedWithin(found.radius95())).orElse(mark);
  }

  /** A plain pad bears its number alone: there are many, and its part's name is near. */
  private String label(Subject subject, Mark.Emphasis emphasis) {
    boolean plainPin = emphasis == Mark.Emphasis.PLAIN && subject instanceof Subject.OfPin;
    return plainPin ? ((Subject.OfPin) subject).pin().pin() : map().nameOf(subject);
  }

  /** All marks of a picture; what stands out last, so that it lies on top. */
  MarkOverlay marksOn(PictureId picture) {
    Optional<Subject> focus = session.selection().focus();
    Optional<Subject> twin = session.selection().card().flatMap(NodeCard::twin);
    List<Mark> plain = new ArrayList<>();
    List<Mark> standingOut = new ArrayList<>();
    for (Placement placement : session.document().seen().placements()) {
      if (placement.picture().equals(picture)) {
        Mark mark = mark(placement, emphasis(placement, focus, twin));
        (mark.emphasis() == Mark.Emphasis.PLAIN ? plain : standingOut).add(mark);
      }
    }
    plain.addAll(standingOut);
    return new MarkOverlay(plain);
  }

  private Mark.Emphasis emphasis(
      Placement placement, Optional<Subject> focus, Optional<Subject> twin) {
    Subject subject = placement.subject();
    boolean marked = session.selection().marked().contains(placement.key());
    if (marked || focus.filter(subject::equals).isPresent()) {
      return Mark.Emphasis.SELECTED;
    }
    Set<Subject> joined = session.selection().joined();
    if (joined.contains(subject)) {
      return Mark.Emphasis.JOINED;
    }
    return twin.filter(subject::equals).isPresent() ? Mark.Emphasis.TWIN : Mark.Emphasis.PLAIN;
  }

  /** The condition of the subject's part, in words with its date code. */
  Optional<String> condition(Subject subject) {
    return session
        .room(ConditionEditor.class)
        .of(subject)
        .map(known -> (known.text() + " " + known.dateCode()).strip());
  }

  /** Readings at their places; on photos also the condition of parts that aren't original. */
  LabelOverlay labelsOn(PictureId picture) {
    List<LabelOverlay.Label> labels = new ArrayList<>();
    MapIndex index = session.document().index();
    session.room(OpenJob.class).unit().ifPresent(unit -> addReadings(unit, picture, labels));
    if (map().picture(picture).filter(Photo.class::isInstance).isPresent()) {
      for (Condition known : session.room(ConditionEditor.class).notOriginal()) {
        index.placementsOf(Subject.of(known.part())).stream()
            .filter(place -> place.picture().equals(picture))
            .forEach(
                place ->
                    labels.add(
                        new LabelOverlay.Label(place.at(), known.text(), Mark.Emphasis.SUSPECT)));
      }
    }
    return new LabelOverlay(labels);
  }

  private void addReadings(UnitReadings unit, PictureId picture, List<LabelOverlay.Label> labels) {
    for (NetId net : unit.netsRead()) {
      Optional<Placement> place =
          unit.reading(net).flatMap(reading -> placeOf(reading.at(), net, picture));
      String text = unit.reading(net).map(reading -> reading.amount().text(4)).orElse("");
      place.ifPresent(
          found -> labels.add(new LabelOverlay.Label(found.at(), text, Mark.Emphasis.SELECTED)));
    }
  }

  /** Where it was read or, for a whole net, the first place of its label or of one of its pins. */
  private Optional<Placement> placeOf(Subject at, NetId net, PictureId picture) {
    MapIndex index = session.document().index();
    Stream<Subject> pins =
        map().net(net).stream().flatMap(found -> found.pins().stream()).map(Subject::of);
    return Stream.concat(Stream.of(at), pins)
        .flatMap(subject -> index.placementsOf(subject).stream())
        .filter(place -> place.picture().equals(picture))
        .findFirst();
  }

  /** Where unplaced twins should lie. */
  PredictedPlaceOverlay ghostsOn(PictureId picture) {
    Optional<Subject> chosen =
        session.room(PredictedPlaces.class).chosen().map(TwinPredictions.Prediction::part);
    return new PredictedPlaceOverlay(
        session.room(PredictedPlaces.class).on(picture).stream()
            .map(
                ghost ->
                    new PredictedPlaceOverlay.Predicted(
                        ghost.at(),
                        ghost.radius95(),
                        List.of(),
                        map().nameOf(ghost.part()),
                        chosen.equals(Optional.of(ghost.part()))))
            .toList());
  }
}
