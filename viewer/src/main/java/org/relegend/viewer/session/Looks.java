package org.relegend.viewer.session;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.relegend.map.MapIndex;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;

/** Brings places into view: lays their pictures on the desk, then asks that they be looked at. */
final class Looks {
  private final Desk desk;
  private final List<Consumer<Look>> listeners = new CopyOnWriteArrayList<>();

  Looks(Desk desk) {
    this.desk = desk;
  }

  void add(Consumer<Look> listener) {
    listeners.add(listener);
  }

  /** On both pictures. */
  void at(Card card) {
    at(card.page());
    at(card.photo());
  }

  /** Near, on both pictures: the card's own place, with what else there belongs to the subject. */
  void closeTo(Card card, Subject subject, MapIndex index) {
    Places places = new Places(index);
    Stream.of(card.page(), card.photo())
        .flatMap(Optional::stream)
        .forEach(
            place -> {
              desk.show(place.picture());
              tell(Look.closeTo(place, places.belonging(subject, place.picture())));
            });
  }

  /** On the other picture than the one the technician points at, as long as the two are linked. */
  void besides(Card card, PictureId pointedAt) {
    if (desk.isLinked()) {
      at(card.page().filter(place -> !place.picture().equals(pointedAt) && !isPage(pointedAt)));
      at(card.photo().filter(place -> !place.picture().equals(pointedAt) && isPage(pointedAt)));
    }
  }

  private boolean isPage(PictureId picture) {
    return desk.pages().stream().anyMatch(page -> page.id().equals(picture));
  }

  void at(Optional<Placement> place) {
    place.ifPresent(
        found -> {
          desk.show(found.picture());
          tell(Look.at(found));
        });
  }

  /** At the spot of the screen where the eye is now. */
  void across(Placement from, Placement to) {
    desk.show(to.picture());
    tell(Look.at(to, from));
  }

  void across(Look.Spot from, PictureId picture, Point to) {
    desk.show(picture);
    tell(new Look(picture, to, List.of(to), Optional.of(from), false));
  }

  private void tell(Look look) {
    listeners.forEach(listener -> listener.accept(look));
  }
}
