package org.relegend.viewer.mode.twins;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Photo;
import org.relegend.map.Placement;
import org.relegend.map.Subject;
import org.relegend.viewer.session.BestPlaces;
import org.relegend.viewer.session.CardStripBuilder;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.Navigator;
import org.relegend.viewer.session.NodeCard;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Room;
import org.relegend.viewer.session.Selection;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.TwinLookup;

/** From a part, pin or node to its twin in the other channel, and back to where the eye was. */
public final class TwinJump implements Room {
  /** Where the eye was before it jumped. */
  private record Origin(Subject chosen, int cursor, Subject target) {}

  private final Session session;
  private final ChangeNotifier hub;
  private final Navigator looks;
  private @Nullable Origin origin;

  public TwinJump(Session session) {
    this.session = session;
    this.hub = session.hub();
    this.looks = session.looks();
  }

  public void jump() {
    hub.check();
    hub.moveOn();
    Selection selection = session.selection();
    Optional<Subject> focus = selection.focus();
    Origin from = origin;
    if (focus.isEmpty()) {
      hub.say(Notice.Kind.NOTHING_CHOSEN);
    } else if (from != null && from.target().equals(focus.get())) {
      jump(from.chosen(), from.cursor(), focus.get(), null);
    } else {
      jumpFrom(focus.get(), selection.subject().orElse(focus.get()), selection.cursor());
    }
  }

  /** From a node that was chosen to its twin, at the twin of the pin walked to. */
  private void jumpFrom(Subject focus, Subject chosen, int cursor) {
    TwinLookup twins = session.document().twins();
    Optional<TwinLookup.Known> pin = twins.of(focus);
    Optional<TwinLookup.Known> twin =
        chosen instanceof Subject.OfNet ? twins.of(chosen).or(() -> pin) : pin;
    if (twin.isEmpty()) {
      new NoTwin(session, hub).say(focus);
      return;
    }
    twin.get().follows().ifPresent(from -> sayFollows(twin.get().subject(), from));
    Subject to = twin.get().subject();
    List<Subject> there =
        new CardStripBuilder(session.document(), session.desk())
            .of(to).cards().stream().map(NodeCard::subject).toList();
    int card = pin.map(known -> there.indexOf(known.subject())).orElse(-1);
    Subject target = there.isEmpty() ? to : there.get(Math.max(0, card));
    jump(to, card, focus, new Origin(chosen, cursor, target));
  }

  private void jump(Subject to, int cursor, Subject from, @Nullable Origin kept) {
    session
        .gate()
        .through(
            session.exposure().of(to),
            () -> {
              Optional<Placement> eye =
                  new BestPlaces(session.document().index())
                      .of(from, Photo.class, session.desk().photo());
              session.selection().choose(to, List.of());
              if (cursor >= 0) {
                session.selection().walkTo(cursor);
              }
              origin = kept;
              session.selection().card().ifPresent(card -> lookAcross(eye, card));
            });
  }

  private void sayFollows(Subject twin, NodeCard.Follows follows) {
    hub.say(
        Notice.Kind.TWIN_FOLLOWS,
        session.map().nameOf(twin),
        session.map().nameOf(follows.from().a()),
        session.map().nameOf(follows.from().b()),
        follows.others());
  }

  private void lookAcross(Optional<Placement> eye, NodeCard card) {
    looks.at(card.page());
    if (card.photo().isEmpty()) {
      hub.say(Notice.Kind.NOT_PLACED_YET, session.map().nameOf(card.subject()));
    } else if (eye.isPresent()) {
      looks.across(eye.get(), card.photo().get());
    } else {
      looks.at(card.photo());
    }
  }
}
