package org.relegend.viewer.mode.look;

import java.util.Optional;
import java.util.Set;
import org.relegend.map.Photo;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.Navigator;
import org.relegend.viewer.session.NodeCard;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.PointerHits;
import org.relegend.viewer.session.Room;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.ViewRequest;

/** Goes to the same spot on another photo: of the board's other side, or of this very unit. */
public final class OtherSide implements Room {
  private final Session session;
  private final ChangeNotifier hub;
  private final Navigator looks;

  public OtherSide(Session session) {
    this.session = session;
    hub = session.hub();
    looks = session.looks();
  }

  /**
   * Lays the photo of the board's other side on the desk, with the same spot in view.
   *
   * @param centre of the view of the photo; what is chosen there goes before it
   */
  public void over(Point centre) {
    hub.check();
    hub.moveOn();
    if (session.desk().isComparing()) {
      session.desk().unface();
    }
    to(session.desk().otherSide(), Notice.Kind.NO_OTHER_SIDE, centre);
  }

  /** To the unit's own photo of that side, and from there back to the map's. */
  public void toUnit(Point centre) {
    hub.check();
    hub.moveOn();
    to(session.desk().sameSide(), Notice.Kind.NO_UNIT_PHOTO, centre);
  }

  private void to(Optional<Photo> other, Notice.Kind none, Point centre) {
    Optional<Photo> shown = session.desk().photo();
    if (shown.isEmpty() || other.isEmpty()) {
      hub.say(none);
      return;
    }
    Point here =
        session
            .selection()
            .card()
            .flatMap(NodeCard::photo)
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
            .orElseGet(() -> uncarried(shown.get(), other.get(), here));
    session
        .gate()
        .through(
            Set.copyOf(PointerHits.zonesAt(session.document().watched(), other.get().id(), there)),
            () ->
                looks.across(
                    new ViewRequest.Spot(shown.get().id(), here), other.get().id(), there));
  }

  /** Without a line-up: of the other side as the board was turned; of the same side about there. */
  private Point uncarried(Photo from, Photo to, Point here) {
    return from.side() == to.side()
        ? new Point(here.x() / from.width() * to.width(), here.y() / from.height() * to.height())
        : Flip.spot(session.map(), from, to, here);
  }
}
