package org.relegend.viewer.session;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.relegend.map.HazardZone;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.twin.Predictions;

/** What pointing at a picture does, by the tool in hand. */
record Pointing(Session session, Hub hub, Looks looks) {
  /** The technician clicked on a picture. */
  void click(Click click) {
    hub.check();
    Optional<Predictions.Prediction> ghost =
        session.tool() == Tool.LOOK ? session.ghosts().at(click) : Optional.empty();
    if (ghost.isPresent()) {
      session.ghosts().open(ghost.get());
      return;
    }
    Optional<Placement> hit = Hits.at(session.document().seen(), click);
    Set<HazardZone> around =
        Set.copyOf(Hits.zonesAt(session.document().seen(), click.picture(), click.at()));
    Set<HazardZone> zones = new LinkedHashSet<>(around);
    hit.ifPresent(place -> zones.addAll(session.exposure().of(place.subject())));
    if (session.tool().marksPlaces() && session.document().isOwn(click.picture())) {
      hub.say(Notice.Kind.UNIT_PHOTO);
      return;
    }
    switch (session.tool()) {
      case LOOK -> session.gate().through(zones, () -> lookAt(click, hit));
      case PLACE ->
          session
              .gate()
              .through(zones, () -> session.placing().place(click).ifPresent(session::showDone));
      case PINS ->
          session
              .gate()
              .through(zones, () -> session.pinning().click(click).ifPresent(session::showDone));
      case TRACE -> session.gate().through(zones, () -> session.trace(hit));
      case ZONE -> session.outlining().click(click);
      case MEASURE -> session.gate().through(around, () -> session.measuring().click(click));
      case LINE_UP ->
          session
              .gate()
              .through(session.pairing().zonesAt(click), () -> session.pairing().click(click));
      case STRAIGHTEN -> session.gate().through(around, () -> session.squaring().click(click));
    }
  }

  private void lookAt(Click click, Optional<Placement> hit) {
    session.ghosts().drop();
    if (hit.isEmpty()) {
      if (!click.more()) {
        session.selection().clear();
      }
    } else if (click.more()) {
      session.selection().toggle(hit.get().key());
    } else {
      session.selection().choose(hit.get().subject(), List.of(hit.get().key()));
      session.selection().card().ifPresent(card -> looks.besides(card, click.picture()));
    }
  }

  /** Marks all placements of a picture between two corners, besides or instead of those marked. */
  void markWithin(PictureId picture, Point a, Point b, boolean more) {
    hub.check();
    List<Placement.Key> found =
        new ArrayList<>(
            Hits.within(session.document().seen(), picture, a, b).stream()
                .map(Placement::key)
                .toList());
    if (more) {
      session.selection().marked().stream().filter(key -> !found.contains(key)).forEach(found::add);
    }
    session.selection().mark(found);
  }

  /** A drag begins there: tells what would be dragged, which is marked then, if it wasn't. */
  boolean grab(Click click) {
    hub.check();
    Optional<Placement> hit = Hits.at(session.document().seen(), click);
    if (session.tool() != Tool.LOOK || hit.isEmpty() || session.document().isReadOnly()) {
      return false;
    }
    if (!session.gate().isOpen(session.exposure().of(hit.get().subject()))) {
      return false;
    }
    if (!session.selection().marked().contains(hit.get().key())) {
      session.selection().choose(hit.get().subject(), List.of(hit.get().key()));
    }
    return true;
  }
}
