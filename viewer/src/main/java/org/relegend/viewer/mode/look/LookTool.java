package org.relegend.viewer.mode.look;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.relegend.map.Box;
import org.relegend.map.HazardZone;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.twin.TwinPredictions;
import org.relegend.viewer.mode.twins.PredictedPlaces;
import org.relegend.viewer.session.Click;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.PointerHits;
import org.relegend.viewer.session.Selection;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.Target;

/** Choosing what is there, by a click or a band around it; what to rest in between all else. */
public final class LookTool implements Mode {
  private final Session session;

  public LookTool(Session session) {
    this.session = session;
  }

  @Override
  public String word() {
    return "look";
  }

  private PredictedPlaces predicted() {
    return session.room(PredictedPlaces.class);
  }

  @Override
  public void click(Target target) {
    Optional<TwinPredictions.Prediction> place = predicted().at(target.click());
    if (place.isPresent()) {
      predicted().open(place.get());
    } else {
      session.gate().through(target.zones(), () -> choose(target.click(), target.placement()));
    }
  }

  private void choose(Click click, Optional<Placement> hit) {
    Selection selection = session.selection();
    predicted().unchoose();
    if (hit.isEmpty()) {
      if (!click.more()) {
        selection.clear();
      }
    } else if (click.more()) {
      selection.toggle(hit.get().key());
    } else {
      selection.choose(hit.get().subject(), List.of(hit.get().key()));
      selection.card().ifPresent(card -> session.looks().besides(card, click.picture()));
    }
  }

  /**
   * Marks all placements of a picture between two corners, besides or instead of those marked; past
   * the cautions of what lies there.
   */
  public void markWithin(PictureId picture, Point a, Point b, boolean more) {
    session.hub().check();
    List<Placement> found = PointerHits.within(session.document().seen(), picture, a, b);
    Set<HazardZone> zones =
        new LinkedHashSet<>(
            PointerHits.zonesIn(session.document().watched(), picture, Box.around(List.of(a, b))));
    found.forEach(place -> zones.addAll(session.exposure().ofPlace(place.subject())));
    session.gate().through(zones, () -> mark(found, more));
  }

  private void mark(List<Placement> found, boolean more) {
    List<Placement.Key> keys = new ArrayList<>(found.stream().map(Placement::key).toList());
    if (more) {
      session.selection().marked().stream().filter(key -> !keys.contains(key)).forEach(keys::add);
    }
    session.selection().mark(keys);
  }

  /** A drag begins there: tells what would be dragged, which is marked then, if it wasn't. */
  public boolean grab(Click click) {
    session.hub().check();
    Optional<Placement> hit = PointerHits.at(session.document().seen(), click);
    if (!session.isIn(LookTool.class) || hit.isEmpty() || session.document().isReadOnly()) {
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
