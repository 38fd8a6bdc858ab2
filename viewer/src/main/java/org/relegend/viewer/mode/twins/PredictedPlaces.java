package org.relegend.viewer.mode.twins;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.relegend.hazard.UnmarkedZones;
import org.relegend.hazard.ZoneOutline;
import org.relegend.map.BoardMap;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.twin.BrightnessImage;
import org.relegend.twin.TwinPredictions;
import org.relegend.twin.TwinResult;
import org.relegend.viewer.session.Attester;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.Click;
import org.relegend.viewer.session.DerivedTwins;
import org.relegend.viewer.session.HazardExposure;
import org.relegend.viewer.session.HazardGate;
import org.relegend.viewer.session.MapDocument;
import org.relegend.viewer.session.Navigator;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Room;
import org.relegend.viewer.session.Selection;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.ShownPictures;
import org.relegend.viewer.session.SubjectHazards;
import org.relegend.viewer.session.SubjectQueries;

/**
 * Where twins that aren't placed on the photo yet should lie. Nothing of it is in the map until it
 * is accepted; what is rejected doesn't come back in this sitting.
 */
public final class PredictedPlaces implements Room {
  private static final int CORNERS = 24;

  /**
   * Predicted places of one photo.
   *
   * @param text in words: how the layouts repeat, or why nothing can be predicted
   * @param weak how many places of the photo weren't counted on
   */
  public record Worked(
      PictureId photo, List<TwinPredictions.Prediction> all, String text, int weak) {
    public Worked {
      all = List.copyOf(all);
    }
  }

  private record Key(PictureId photo, Subject part) {}

  private final MapDocument document;
  private final ShownPictures desk;
  private final HazardGate gate;
  private final Attester hand;
  private final ChangeNotifier hub;
  private final Navigator looks;
  private final Selection selection;
  private final Set<Key> rejected = new HashSet<>();
  private boolean shown;
  private @Nullable Worked worked;
  private @Nullable Subject chosen;

  public PredictedPlaces(Session session) {
    this.document = session.document();
    this.desk = session.desk();
    this.gate = session.gate();
    this.hand = session.hand();
    this.hub = session.hub();
    this.looks = session.looks();
    this.selection = session.selection();
  }

  /**
   * Works out where the unplaced twins should lie. Places that were only inferred or guessed aren't
   * counted on: they may be what was predicted before.
   *
   * @param seen what the photo shows, to bring the places nearer; any thread may do this
   */
  public static Worked work(
      BoardMap map, PictureId photo, DerivedTwins following, Optional<BrightnessImage> seen) {
    List<Placement> here =
        map.placements().stream().filter(place -> place.picture().equals(photo)).toList();
    List<Placement> counted =
        here.stream().filter(place -> place.best().compareTo(Evidence.INFERRED) < 0).toList();
    BoardMap firm = map.with(MapTables.PLACEMENTS, Table.of(counted));
    Map<Subject, TwinPredictions.Prediction> all = new HashMap<>();
    Set<String> stated = new LinkedHashSet<>();
    for (TwinResult channels : following.channels()) {
      TwinPredictions found = TwinPredictions.on(firm, photo, channels, seen);
      stated.add(found.text());
      for (TwinPredictions.Prediction place : found.all()) {
        all.merge(place.part(), place, (a, b) -> a.radius95() <= b.radius95() ? a : b);
      }
    }
    return new Worked(
        photo,
        all.values().stream()
            .sorted(Comparator.comparing(TwinPredictions.Prediction::part))
            .toList(),
        String.join(" ", stated),
        here.size() - counted.size());
  }

  /** Whether they are shown. */
  public boolean areShown() {
    return shown;
  }

  public void show(boolean now) {
    hub.check();
    shown = now;
    if (!now) {
      worked = null;
      chosen = null;
    }
    hub.fire(Change.GHOSTS);
  }

  /** Takes in what was worked out; dropped where they are not shown any more. */
  public void take(Worked found) {
    hub.check();
    if (shown) {
      worked = found;
      hub.fire(Change.GHOSTS);
    }
  }

  /** Those of the photo on the desk; empty where they aren't shown. */
  public List<TwinPredictions.Prediction> all() {
    return desk.photo().map(photo -> on(photo.id())).orElse(List.of());
  }

  /** Those on a picture that are neither placed, nor carried over, nor rejected. */
  public List<TwinPredictions.Prediction> on(PictureId picture) {
    Worked known = worked;
    if (!shown || known == null || !known.photo().equals(picture)) {
      return List.of();
    }
    return known.all().stream()
        .filter(ghost -> !rejected.contains(new Key(picture, ghost.part())))
        .filter(ghost -> !document.seen().placements().has(placeOf(ghost)))
        .filter(ghost -> SubjectQueries.isIn(document.map(), ghost.part()))
        .toList();
  }

  private static Placement.Key placeOf(TwinPredictions.Prediction ghost) {
    return new Placement.Key(ghost.picture(), ghost.part(), 1);
  }

  /** How the layouts repeat, or why nothing is shown; empty until that is known. */
  public Optional<String> text() {
    return Optional.ofNullable(worked).map(Worked::text);
  }

  /** Where a part should lie, as long as no caution of its zones is unread. */
  public Optional<TwinPredictions.Prediction> seen(Subject part) {
    return all().stream()
        .filter(ghost -> ghost.part().equals(part))
        .filter(ghost -> gate.isOpen(zones(ghost)))
        .findFirst();
  }

  /** How many places of the photo weren't counted on, since they were only inferred or guessed. */
  public int weak() {
    return worked == null ? 0 : worked.weak();
  }

  /** The one that the next key is about. */
  public Optional<TwinPredictions.Prediction> chosen() {
    return all().stream().filter(ghost -> ghost.part().equals(chosen)).findFirst();
  }

  /** Chooses one without leading there. */
  public void pick(TwinPredictions.Prediction ghost) {
    hub.check();
    if (!ghost.part().equals(chosen)) {
      chosen = ghost.part();
      hub.fire(Change.GHOSTS);
    }
  }

  /** Something else was pointed at. */
  public void unchoose() {
    if (chosen != null) {
      chosen = null;
      hub.fire(Change.GHOSTS);
    }
  }

  /** The ghost whose middle is pointed at. */
  public Optional<TwinPredictions.Prediction> at(Click click) {
    return on(click.picture()).stream()
        .filter(ghost -> ghost.at().distance(click.at()) <= 1.5 * click.reach())
        .min(Comparator.comparingDouble(ghost -> ghost.at().distance(click.at())));
  }

  /** Chooses one, with the part it is of, and leads there; past the cautions of its zones. */
  public void open(TwinPredictions.Prediction ghost) {
    hub.check();
    Set<HazardZone> zones = zones(ghost);
    zones.addAll(new HazardExposure(document, desk).of(ghost.part()));
    gate.through(
        zones,
        () -> {
          selection.choose(ghost.part(), List.of());
          selection.card().ifPresent(card -> looks.at(card.page()));
          pick(ghost);
          looks.at(ghost.picture(), ghost.at(), around(ghost));
        });
  }

  /** The zones that the circle reaches into, and those around the part wherever it is placed. */
  private Set<HazardZone> zones(TwinPredictions.Prediction ghost) {
    Set<HazardZone> zones = new LinkedHashSet<>(new SubjectHazards(document).around(ghost.part()));
    document.watched().stream()
        .filter(zone -> zone.picture().equals(ghost.picture()))
        .filter(
            zone ->
                ZoneOutline.contains(zone.outline(), ghost.at())
                    || ZoneOutline.overlap(zone.outline(), around(ghost)))
        .forEach(zones::add);
    SubjectQueries.partOf(ghost.part())
        .flatMap(part -> document.hazards().threatAt(part))
        .flatMap(
            kind ->
                document
                    .laid()
                    .picture(ghost.picture())
                    .map(
                        picture -> UnmarkedZones.around(around(ghost), picture, kind, "predicted")))
        .ifPresent(zones::add);
    return zones;
  }

  /** The circle, by its corners. */
  private static List<Point> around(TwinPredictions.Prediction ghost) {
    List<Point> circle = new ArrayList<>();
    double radius = Math.max(1, ghost.radius95());
    for (int i = 0; i < CORNERS; i++) {
      double angle = 2 * Math.PI * i / CORNERS;
      circle.add(ghost.at().plus(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    return circle;
  }

  /** The chosen one becomes a placement; the next one is chosen then. */
  public void accept() {
    hub.check();
    Optional<TwinPredictions.Prediction> ghost = chosen();
    if (ghost.isEmpty()) {
      hub.say(Notice.Kind.NOTHING_CHOSEN);
      return;
    }
    gate.through(
        zones(ghost.get()),
        () -> {
          Optional<Subject> next = after(ghost.get());
          if (document.apply(edit(ghost.get()))) {
            chosen = next.orElse(null);
            hub.say(Notice.Kind.GHOST_ACCEPTED, document.map().nameOf(ghost.get().part()));
            hub.fire(Change.GHOSTS);
          }
        });
  }

  /** All of the photo become placements, as one edit. */
  public void acceptAll() {
    hub.check();
    List<TwinPredictions.Prediction> all = all();
    if (all.isEmpty()) {
      hub.say(Notice.Kind.NOTHING_PROPOSED);
      return;
    }
    Set<HazardZone> zones = new LinkedHashSet<>();
    all.forEach(ghost -> zones.addAll(zones(ghost)));
    List<Edit> edits = all.stream().map(this::edit).toList();
    gate.through(
        zones,
        () -> {
          if (document.apply(
              new EditGroup("Accept %d predicted places".formatted(edits.size()), edits))) {
            hub.say(Notice.Kind.GHOSTS_ACCEPTED, edits.size());
          }
        });
  }

  private Edit edit(TwinPredictions.Prediction ghost) {
    return MapTables.PLACEMENTS.put(
        new Placement(ghost.picture(), ghost.part(), ghost.at(), hand.attests(Evidence.INFERRED)));
  }

  /** The chosen one isn't there; it doesn't come back in this sitting. */
  public void reject() {
    hub.check();
    chosen()
        .ifPresentOrElse(
            ghost -> {
              Optional<Subject> next = after(ghost);
              rejected.add(new Key(ghost.picture(), ghost.part()));
              chosen = next.orElse(null);
              hub.say(Notice.Kind.GHOST_REJECTED, document.map().nameOf(ghost.part()));
              hub.fire(Change.GHOSTS);
            },
            () -> hub.say(Notice.Kind.NOTHING_CHOSEN));
  }

  /** None of the photo is right. */
  public void rejectAll() {
    hub.check();
    List<TwinPredictions.Prediction> all = all();
    all.forEach(ghost -> rejected.add(new Key(ghost.picture(), ghost.part())));
    chosen = null;
    if (all.isEmpty()) {
      hub.say(Notice.Kind.NOTHING_PROPOSED);
    } else {
      hub.say(Notice.Kind.ALL_REJECTED, all.size());
    }
    hub.fire(Change.GHOSTS);
  }

  /** The one that follows in the list, round its end. */
  private Optional<Subject> after(TwinPredictions.Prediction ghost) {
    List<Subject> parts = all().stream().map(TwinPredictions.Prediction::part).toList();
    int next = parts.indexOf(ghost.part()) + 1;
    return parts.size() < 2 ? Optional.empty() : Optional.of(parts.get(next % parts.size()));
  }
}
