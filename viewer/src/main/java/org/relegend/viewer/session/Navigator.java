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
public final class Navigator {
  private final ShownPictures desk;
  private final List<Consumer<ViewRequest>> listeners = new CopyOnWriteArrayList<>();

  public Navigator(ShownPictures desk) {
    this.desk = desk;
  }

  public void add(Consumer<ViewRequest> listener) {
    listeners.add(listener);
  }

  /** At a place where nothing is placed yet. */
  public void at(PictureId picture, Point to, List<Point> extent) {
    show(picture);
    tell(new ViewRequest(picture, to, extent, Optional.empty(), true));
  }

  /** On both pictures. */
  public void at(NodeCard card) {
    at(card.page());
    at(card.photo());
  }

  /** Near, on both pictures: the card's own place, with what else there belongs to the subject. */
  public void closeTo(NodeCard card, Subject subject, MapIndex index) {
    BestPlaces places = new BestPlaces(index);
    Stream.of(card.page(), card.photo())
        .flatMap(Optional::stream)
        .forEach(
            place -> {
              show(place.picture());
              tell(ViewRequest.closeTo(place, places.belonging(subject, place.picture())));
            });
  }

  /** On the other picture than the one the technician points at, as long as the two are linked. */
  public void besides(NodeCard card, PictureId pointedAt) {
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
          tell(ViewRequest.at(found));
        });
  }

  /** At the spot of the screen where the eye is now. */
  public void across(Placement from, Placement to) {
    show(to.picture());
    tell(ViewRequest.at(to, from));
  }

  public void across(ViewRequest.Spot from, PictureId picture, Point to) {
    show(picture);
    tell(new ViewRequest(picture, to, List.of(to), Optional.of(from), false));
  }

  private void show(PictureId picture) {
    if (!desk.isComparing()) {
      desk.show(picture);
    }
  }

  /** While two channels are compared, the photos follow what is chosen by themselves. */
  private void tell(ViewRequest look) {
    if (!desk.isComparing()) {
      listeners.forEach(listener -> listener.accept(look));
    }
  }
}
