package org.relegend.viewer.session;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.Photo;
import org.relegend.map.Placement;
import org.relegend.map.Subject;

/** From a part, pin or node to its twin in the other channel, and back to where the eye was. */
final class TwinJump {
  /** Where the eye was before it jumped. */
  private record Origin(Subject chosen, int cursor, Subject target) {}

  private final Session session;
  private final Hub hub;
  private final Looks looks;
  private @Nullable Origin origin;

  TwinJump(Session session, Hub hub, Looks looks) {
    this.session = session;
    this.hub = hub;
    this.looks = looks;
  }

  void jump() {
    hub.check();
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

  private void jumpFrom(Subject focus, Subject chosen, int cursor) {
    Optional<Subject> twin = new Twins(session.document().index()).of(focus);
    if (twin.isEmpty()) {
      sayNoTwin(focus);
    } else {
      jump(twin.get(), -1, focus, new Origin(chosen, cursor, twin.get()));
    }
  }

  private void jump(Subject to, int cursor, Subject from, @Nullable Origin kept) {
    Exposure exposure = new Exposure(session.document().index(), session.desk());
    session
        .gate()
        .through(
            exposure.of(to),
            () -> {
              Optional<Placement> eye =
                  new Places(session.document().index())
                      .of(from, Photo.class, session.desk().photo());
              session.selection().choose(to, List.of());
              if (cursor >= 0) {
                session.selection().walkTo(cursor);
              }
              origin = kept;
              session.selection().card().ifPresent(card -> lookAcross(eye, card));
            });
  }

  private void lookAcross(Optional<Placement> eye, Card card) {
    looks.at(card.page());
    if (card.photo().isEmpty()) {
      hub.say(Notice.Kind.NOT_PLACED_YET, session.map().nameOf(card.subject()));
    } else if (eye.isPresent()) {
      looks.across(eye.get(), card.photo().get());
    } else {
      looks.at(card.photo());
    }
  }

  private void sayNoTwin(Subject subject) {
    String name = session.map().nameOf(subject);
    String channel = channelOf(subject);
    if (channel.isEmpty()) {
      hub.say(Notice.Kind.NO_TWIN, name);
    } else {
      hub.say(Notice.Kind.NO_TWIN_CHANNEL, name, channel);
    }
  }

  private String channelOf(Subject subject) {
    if (subject instanceof Subject.OfNet net) {
      return session.map().net(net.net()).map(Net::channel).orElse("");
    }
    return Subjects.partOf(subject).flatMap(session.map()::part).map(Part::channel).orElse("");
  }
}
