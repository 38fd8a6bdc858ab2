package org.relegend.viewer.session;

import java.util.Optional;
import java.util.Set;
import org.relegend.map.Photo;
import org.relegend.map.Placement;
import org.relegend.map.Point;

/** Goes to the same spot on the photo of the board's other side. */
record TurnOver(Session session, Hub hub, Looks looks) {
  void over(Point centre) {
    Optional<Photo> shown = session.desk().photo();
    Optional<Photo> other = session.desk().otherSide();
    if (shown.isEmpty() || other.isEmpty()) {
      hub.say(Notice.Kind.NO_OTHER_SIDE);
      return;
    }
    Point here =
        session
            .selection()
            .card()
            .flatMap(Card::photo)
            .filter(place -> place.picture().equals(shown.get().id()))
            .map(Placement::at)
            .orElse(centre);
    Point there =
        session
            .document()
            .carrier()
            .carry(shown.get().id(), here, other.get().id())
            .map(found -> found.at())
            .filter(other.get()::contains)
            .orElseGet(() -> Flip.spot(session.map(), shown.get(), other.get(), here));
    session
        .gate()
        .through(
            Set.copyOf(Hits.zonesAt(session.document().seen(), other.get().id(), there)),
            () -> looks.across(new Look.Spot(shown.get().id(), here), other.get().id(), there));
  }
}
