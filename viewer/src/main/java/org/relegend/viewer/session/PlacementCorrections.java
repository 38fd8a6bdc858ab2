package org.relegend.viewer.session;

import java.util.List;
import java.util.Optional;
import org.relegend.map.BoardMap;
import org.relegend.map.ConfirmPlacement;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.MapTables;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Subject;

/** What is done to the marked placements: moved, taken away, confirmed; each one edit. */
public final class PlacementCorrections implements Room {
  private final MapDocument document;
  private final Selection selection;
  private final Attester hand;
  private final ChangeNotifier hub;

  public PlacementCorrections(Session session) {
    document = session.document();
    selection = session.selection();
    hand = session.hand();
    hub = session.hub();
  }

  /** Moves the marked placements of one picture by so much, in picture units. */
  public void move(PictureId on, double dx, double dy) {
    List<Placement> moved = marked().stream().filter(place -> place.picture().equals(on)).toList();
    if (moved.isEmpty()) {
      hub.say(Notice.Kind.NOTHING_CHOSEN);
      return;
    }
    List<Edit> steps =
        moved.stream()
            .map(place -> place.movedTo(place.at().plus(dx, dy), hand.attests()))
            .map(place -> (Edit) MapTables.PLACEMENTS.put(place))
            .toList();
    if (document.apply(group("Move", moved, steps))) {
      say(Notice.Kind.MOVED, Notice.Kind.MOVED_SEVERAL, moved);
    }
  }

  /** Takes the marked placements off their pictures; the parts stay in the map. */
  public void takeAway() {
    List<Placement> all = marked();
    List<Placement> gone =
        all.stream().filter(place -> document.map().placements().has(place.key())).toList();
    if (gone.isEmpty() && !all.isEmpty()) {
      Placement carried = all.get(0);
      hub.say(Notice.Kind.CARRIED_STAYS, document.map().nameOf(carried.subject()));
      return;
    }
    if (gone.isEmpty()) {
      hub.say(Notice.Kind.NOTHING_CHOSEN);
      return;
    }
    List<Edit> steps =
        gone.stream().map(place -> (Edit) MapTables.PLACEMENTS.remove(place.key())).toList();
    if (document.apply(group("Take away", gone, steps))) {
      hub.say(Notice.Kind.TAKEN_AWAY, gone.size());
    }
  }

  /** Stands for the marked placements, on the evidence in use. */
  public void confirm() {
    List<Placement> good = marked();
    if (good.isEmpty()) {
      hub.say(Notice.Kind.NOTHING_CHOSEN);
      return;
    }
    List<Edit> steps = good.stream().map(this::confirmed).toList();
    if (document.apply(group("Confirm", good, steps))) {
      hub.say(Notice.Kind.CONFIRMED, good.size(), hand.evidence().word());
    }
  }

  /** What was carried over becomes the picture's own. */
  private Edit confirmed(Placement place) {
    return document
        .carried(place.key())
        .map(carried -> carried.confirmed(hand.attests()))
        .orElseGet(() -> new ConfirmPlacement(place.key(), hand.attests()));
  }

  /** What is marked, carried over or not. */
  private List<Placement> marked() {
    BoardMap map = document.seen();
    return selection.marked().stream()
        .sorted()
        .map(map.placements()::find)
        .flatMap(Optional::stream)
        .toList();
  }

  private Edit group(String verb, List<Placement> places, List<Edit> steps) {
    return steps.size() == 1
        ? steps.get(0)
        : new EditGroup("%s %d places".formatted(verb, places.size()), steps);
  }

  private void say(Notice.Kind one, Notice.Kind several, List<Placement> places) {
    if (places.size() == 1) {
      Subject subject = places.get(0).subject();
      hub.say(one, document.map().nameOf(subject));
    } else {
      hub.say(several, places.size());
    }
  }
}
