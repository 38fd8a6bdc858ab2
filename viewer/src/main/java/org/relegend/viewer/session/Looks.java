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
public final class Looks {
  private final Desk desk;
  private final List<Consumer<Look>> listeners = new CopyOnWriteArrayList<>();

  public Looks(Desk desk) {
    this.desk = desk;
  }

  public void add(Consumer<Look> listener) {
    listeners.add(listener);
  }

  /** At a place where nothing is placed yet. */
  public void at(PictureId picture, Point to, List<Point> extent) {
    show(picture);
    tell(new Look(picture, to, extent, Optional.empty(), true));
  }

  /** On both pictures. */
  public void at(Card card) {
    at(card.page());
    at(card.photo());
  }

  /** Near, on both pictures: the card's own place, with what else there belongs to the subject. */
  public void closeTo(Card card, Subject subject, MapIndex index) {
    Places places = new Places(index);
    Stream.of(card.page(), card.photo())
        .flatMap(Optional::stream)
        .forEach(
            place -> {
              show(place.picture());
              tell(Look.closeTo(place, places.belonging(subject, place.picture())));
            });
  }

  /** On the other picture than the one the technician points at, as long as the two are linked. */
  public void besides(Card card, PictureId pointedAt) {
    if (desk.isLinked()) {
      at(card.page().filter(place -> !place.picture().equals(pointedAt) && !isPage(pointedAt)));
      at(card.photo().filter(place -> !place.picture().equals(pointedAt) && isPage(pointedAt)));
    }
  }

  private boolean isPage(PictureId picture) {
    return desk.pages().stream().anyMatch(page -> page.id().equals(picture));
  }

  public void at(Optional<Placement> place) {
    place.ifPresent(
        found -> {
          show(found.picture());
          tell(Look.at(found));
        });
  }

  /** At the spot of the screen where the eye is now. */
  public void across(Placement from, Placement to) {
    show(to.picture());
    tell(Look.at(to, from));
  }

  public void across(Look.Spot from, PictureId picture, Point to) {
    show(picture);
    tell(new Look(picture, to, List.of(to), Optional.of(from), false));
  }

  private void show(PictureId picture) {
    if (!desk.isComparing()) {
      desk.show(picture);
    }
  }

  /** While two channels are compared, the photos follow what is chosen by themselves. */
  private void tell(Look look) {
    if (!desk.isComparing()) {
      listeners.forEach(listener -> listener.accept(look));
    }
  }
}
