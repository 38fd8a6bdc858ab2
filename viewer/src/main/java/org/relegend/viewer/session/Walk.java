package org.relegend.viewer.session;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.relegend.map.BoardMap;
import org.relegend.map.PictureId;
import org.relegend.map.Subject;

/** From place to place: by name, along the strip, to what was changed; always past the gate. */
public final class Walk {
  private final Session session;

  Walk(Session session) {
    this.session = session;
  }

  private void moveOn() {
    session.hub().check();
    session.hub().moveOn();
  }

  /** Chooses a thing and goes near it, on this picture, if it is placed there. */
  public void choose(Subject subject, Optional<PictureId> on) {
    moveOn();
    session
        .gate()
        .through(
            session.exposure().of(subject),
            () -> {
              on.ifPresent(session.desk()::show);
              session.selection().choose(subject, List.of());
              goNear(subject);
            });
  }

  private void goNear(Subject subject) {
    Optional<NodeCard> card = session.selection().card();
    card.ifPresent(shown -> session.looks().closeTo(shown, subject, session.document().index()));
    if (card.filter(shown -> shown.page().or(shown::photo).isPresent()).isEmpty()) {
      session.hub().say(Notice.Kind.NOT_PLACED_YET, session.map().nameOf(subject));
    }
  }

  /** Chooses what was just worked on; its cards may show places in zones not yet cautioned of. */
  public void showDone(Subject subject) {
    session
        .gate()
        .through(
            session.exposure().of(subject), () -> session.selection().choose(subject, List.of()));
  }

  /** Whether the map has it. */
  public boolean knows(Subject subject) {
    return SubjectQueries.isIn(session.map(), subject);
  }

  /** Chooses what was chosen in an earlier sitting, with the card walked to; then does the rest. */
  public void chooseAgain(Subject subject, int card, Runnable then) {
    session.hub().check();
    session
        .gate()
        .through(
            session.exposure().of(subject),
            () -> {
              session.selection().choose(subject, List.of());
              session.selection().walkTo(card);
              then.run();
            });
  }

  /** Walks along the strip by so many cards; both pictures follow. */
  public void by(int cards) {
    to(session.selection().cursor() + cards);
  }

  /** Walks to a card of the strip; both pictures follow. */
  public void to(int card) {
    moveOn();
    List<NodeCard> cards = session.selection().strip().cards();
    if (cards.isEmpty()) {
      return;
    }
    int target = Math.max(0, Math.min(cards.size() - 1, card));
    session
        .gate()
        .through(
            Set.copyOf(cards.get(target).zones()),
            () -> {
              session.selection().walkTo(target);
              session.looks().at(cards.get(target));
            });
  }

  /** Opens what the card walked to stands for: its own node or part. */
  public void open() {
    session.selection().card().ifPresent(card -> session.choose(card.subject()));
  }

  /** Goes to the place that differs from an earlier map, if there is one. */
  void showChanged(BoardMap before) {
    ChangedMarks.place(before, session.map())
        .ifPresent(
            place ->
                session
                    .gate()
                    .through(
                        session.exposure().ofPlace(place.subject()),
                        () -> session.looks().at(Optional.of(place))));
  }
}
