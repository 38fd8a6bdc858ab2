package org.relegend.viewer.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.relegend.bench.JobPhoto;
import org.relegend.bench.OwnPhotos;
import org.relegend.circuit.Circuit;
import org.relegend.hazard.Hazards;
import org.relegend.hazard.UnmarkedZones;
import org.relegend.hazard.VoltageLimits;
import org.relegend.lineup.CarriedPlacement;
import org.relegend.lineup.CarriedZone;
import org.relegend.lineup.PlacementCarrier;
import org.relegend.map.BoardMap;
import org.relegend.map.Edit;
import org.relegend.map.EditHistory;
import org.relegend.map.EditRefusedException;
import org.relegend.map.HazardZone;
import org.relegend.map.MapIndex;
import org.relegend.map.MapTables;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Table;

/** The open map as it is edited: every change of it goes through here. */
public final class MapDocument {
  /** Is told of each change of the map, in order, so that none is lost. */
  public interface Storage {
    /** An edit was made. */
    void made(Edit edit, BoardMap after);

    /** The last edit was taken back. */
    void undone(BoardMap after);

    /** An edit was made again. */
    void redone(BoardMap after);
  }

  private static final Function<Circuit, Hazards> DEFAULT_JUDGE =
      circuit -> Hazards.of(circuit, VoltageLimits.INSTRUMENTS);

  private final ChangeNotifier hub;
  private final List<Storage> keepers = new CopyOnWriteArrayList<>();
  private final EditHistory history;
  private @Nullable MapIndex index;
  private @Nullable PlacementCarrier carrier;
  private @Nullable BoardMap seen;
  private @Nullable Hazards hazards;
  private @Nullable List<HazardZone> watched;
  private Function<Circuit, Hazards> judge = DEFAULT_JUDGE;
  private @Nullable BoardMap laid;
  private Table<PictureId, JobPhoto> own = Table.empty();
  private DerivedTwins following = DerivedTwins.NONE;
  private boolean readOnly;

  public MapDocument(EditHistory history, ChangeNotifier hub) {
    this.hub = hub;
    this.history = history;
  }

  public void add(Storage keeper) {
    keepers.add(keeper);
  }

  public BoardMap map() {
    return history.current();
  }

  /**
   * The map with the photos of this very unit beside its own, and what ties them: the pictures that
   * can be looked at. Never what is edited or saved.
   */
  public BoardMap laid() {
    BoardMap known = laid;
    if (known == null) {
      known = OwnPhotos.over(map(), own);
      laid = known;
    }
    return known;
  }

  /** Lays the photos of a job beside those of the map, in the place of those before. */
  public void lay(Table<PictureId, JobPhoto> photos) {
    if (!photos.equals(own)) {
      own = photos;
      forget();
      hub.fire(Change.MAP);
      hub.fire(Change.PICTURES);
    }
  }

  /** The photo of the job that is known so among the pictures; none where it is one of the map. */
  public Optional<JobPhoto> own(PictureId picture) {
    return own.isEmpty() ? Optional.empty() : OwnPhotos.find(map(), own, picture);
  }

  public boolean isOwn(PictureId picture) {
    return own(picture).isPresent();
  }

  /** What line-ups carry from picture to picture, as the map is now. */
  public PlacementCarrier carrier() {
    PlacementCarrier known = carrier;
    if (known == null) {
      known = PlacementCarrier.of(laid());
      carrier = known;
    }
    return known;
  }

  /**
   * The map with all that line-ups carry over added to it, placements and hazard zones: what can be
   * seen and pointed at. Never what is edited or saved.
   */
  public BoardMap seen() {
    BoardMap known = seen;
    if (known == null) {
      known = carrier().seen();
      seen = known;
    }
    return known;
  }

  /**
   * All zones that stand before a place: those that are seen, and those around dangers that follow
   * from the circuit and that nobody outlined. Followed anew after each edit, when first asked for.
   */
  public List<HazardZone> watched() {
    List<HazardZone> known = watched;
    if (known == null) {
      BoardMap map = seen();
      List<HazardZone> all = new ArrayList<>();
      map.zones().forEach(all::add);
      all.addAll(UnmarkedZones.of(map, hazards()));
      known = List.copyOf(all);
      watched = known;
    }
    return known;
  }

  /** Where what is seen of the map can hurt, by its circuit. */
  public Hazards hazards() {
    Hazards known = hazards;
    if (known == null) {
      // what line-ups carry is in it already
      known = judge.apply(Circuit.of(seen().with(MapTables.LINE_UPS, Table.empty())));
      hazards = known;
    }
    return known;
  }

  /**
   * From now on dangers are followed so, as with the readings of a job; empty: by the map alone.
   */
  public void judge(Optional<Function<Circuit, Hazards>> changed) {
    hub.check();
    judge = changed.orElse(DEFAULT_JUDGE);
    hazards = null;
    watched = null;
  }

  /** What was carried there; none where it is placed itself, or not there at all. */
  public Optional<CarriedPlacement> carried(Placement.Key key) {
    return laid().lineUps().isEmpty() || map().placements().has(key)
        ? Optional.empty()
        : carrier().find(key);
  }

  /** A zone as people know it; one that was carried over by the zone that was drawn. */
  public String nameOf(HazardZone zone) {
    if (UnmarkedZones.has(zone)) {
      String caption =
          laid().picture(zone.picture()).map(Picture::caption).orElse(zone.picture().text());
      return "%s on %s".formatted(zone.kind().word().replace('-', ' '), caption);
    }
    HazardZone drawn =
        carrier().zonesOn(zone.picture()).stream()
            .filter(carried -> carried.zone().id().equals(zone.id()))
            .map(CarriedZone::source)
            .findFirst()
            .orElse(zone);
    return map().nameOf(drawn);
  }

  /** The index of what is seen of the map; made anew after each edit, when first asked for. */
  public MapIndex index() {
    MapIndex known = index;
    if (known == null) {
      known = new MapIndex(seen());
      index = known;
    }
    return known;
  }

  public boolean isReadOnly() {
    return readOnly;
  }

  /** The twins of what is seen, said or following from what was said. */
  public TwinLookup twins() {
    return new TwinLookup(index(), following);
  }

  /** What follows from the twins of the map, as it was worked out last. */
  public DerivedTwins following() {
    return following;
  }

  public void follow(DerivedTwins worked) {
    following = worked;
    hub.fire(Change.TWINS);
  }

  /** From now on edits are refused, or taken again. */
  public void setReadOnly(boolean readOnly) {
    hub.check();
    this.readOnly = readOnly;
    hub.fire(Change.RIGHTS);
  }

  /** Makes an edit; where it can't be made says why. Tells whether the map is as asked now. */
  public boolean apply(Edit edit) {
    hub.check();
    if (readOnly) {
      hub.say(Notice.Kind.READ_ONLY);
      return false;
    }
    try {
      if (!own.isEmpty() && marksOwn(edit.applyTo(laid()))) {
        hub.say(Notice.Kind.UNIT_PHOTO);
        return false;
      }
      if (history.apply(edit)) {
        hub.moveOn();
        changed(keeper -> keeper.made(edit, map()));
      }
      return true;
    } catch (EditRefusedException refused) {
      hub.say(Notice.Kind.REFUSED, String.valueOf(refused.getMessage()));
      return false;
    }
  }

  /** A map is shared, a job is private: nothing in the map may lie on a photo of the job. */
  private boolean marksOwn(BoardMap after) {
    return after.placements().stream().anyMatch(place -> isOfUnit(place.picture()))
        || after.zones().stream().anyMatch(zone -> isOfUnit(zone.picture()))
        || after.lineUps().stream()
            .filter(pairs -> isOfUnit(pairs.a()) || isOfUnit(pairs.b()))
            .anyMatch(pairs -> !laid().lineUps().find(pairs.key()).equals(Optional.of(pairs)));
  }

  private boolean isOfUnit(PictureId picture) {
    return !map().pictures().has(picture) && laid().pictures().has(picture);
  }

  public boolean undo() {
    return step(true);
  }

  public boolean redo() {
    return step(false);
  }

  private boolean step(boolean back) {
    hub.check();
    if (readOnly) {
      hub.say(Notice.Kind.READ_ONLY);
      return false;
    }
    String label = (back ? undoLabel() : redoLabel()).orElse("");
    Optional<Edit> done = back ? history.undo() : history.redo();
    if (done.isEmpty()) {
      hub.say(back ? Notice.Kind.NOTHING_TO_UNDO : Notice.Kind.NOTHING_TO_REDO);
      return false;
    }
    if (back) {
      changed(keeper -> keeper.undone(map()));
    } else {
      changed(keeper -> keeper.redone(map()));
    }
    hub.say(back ? Notice.Kind.UNDONE : Notice.Kind.REDONE, label);
    return true;
  }

  private void changed(Consumer<Storage> tell) {
    forget();
    keepers.forEach(tell);
    hub.fire(Change.MAP);
  }

  private void forget() {
    index = null;
    seen = null;
    hazards = null;
    watched = null;
    laid = null;
    carrier = carrier == null ? null : carrier.after(laid());
  }

  public Optional<String> undoLabel() {
    return history.undoLabel();
  }

  public Optional<String> redoLabel() {
    return history.redoLabel();
  }
}
