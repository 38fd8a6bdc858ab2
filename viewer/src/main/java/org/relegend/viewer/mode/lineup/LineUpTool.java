package org.relegend.viewer.mode.lineup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.relegend.lineup.Fit;
import org.relegend.lineup.LineUp;
import org.relegend.lineup.PairError;
import org.relegend.lineup.StoredLineUp;
import org.relegend.lineup.TransformModel;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.PicturePairs.Origin;
import org.relegend.map.PicturePairs.Spot;
import org.relegend.map.Point;
import org.relegend.viewer.mode.bench.UnitPhotoEditor;
import org.relegend.viewer.session.Attester;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.Click;
import org.relegend.viewer.session.MapDocument;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.PointerHits;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.ShownPictures;
import org.relegend.viewer.session.Target;

/**
 * Lining two photos, or two scans of a page, up by pairs: the same spot clicked on both, in either
 * order. Each whole pair is an edit, so that it is kept and can be undone.
 */
public final class LineUpTool implements Mode {
  /** So many pairs of photos always fit, also where one is wrong. */
  public static final int ALWAYS_FIT = TransformModel.HOMOGRAPHY.fewest();

  /** How a pair lies to the others. */
  public enum PairState {
    /** Too few pairs to tell. */
    UNKNOWN,
    GOOD,
    /** Used, but off by more than clicks are. */
    DOUBTFUL,
    /** Left out, since the others agree without it. */
    WRONG
  }

  /** One half of a pair that waits for the other. */
  public record Half(PictureId picture, Point at) {}

  private final Session session;
  private final MapDocument document;
  private final ShownPictures desk;
  private final Attester hand;
  private final UnitPhotoEditor unit;
  private final ChangeNotifier hub;
  private @Nullable Half half;
  private int chosen = -1;

  public LineUpTool(Session session) {
    this.session = session;
    this.document = session.document();
    this.desk = session.desk();
    this.hand = session.hand();
    this.unit = session.room(UnitPhotoEditor.class);
    this.hub = session.hub();
  }

  @Override
  public String word() {
    return "line_up";
  }

  @Override
  public boolean isOnTwoPictures() {
    return true;
  }

  @Override
  public void click(Target target) {
    session.gate().through(zonesAt(target.click()), () -> click(target.click()));
  }

  /** Lays two pages side by side, to line them up: another scan, or a better one. */
  public void takePages() {
    hub.check();
    session.rest();
    if (layPages()) {
      session.take(this);
    }
  }

  /** Lays two photos side by side; tells whether the board has two. */
  @Override
  public boolean begin() {
    drop();
    if (desk.facing().isPresent() || desk.beside().isPresent() || desk.face()) {
      return true;
    }
    hub.say(Notice.Kind.NO_OTHER_PHOTO);
    return false;
  }

  /** Lays two pages side by side; tells whether there are two. */
  public boolean layPages() {
    if (desk.layPageBeside()) {
      return true;
    }
    hub.say(Notice.Kind.NO_OTHER_PAGE);
    return false;
  }

  @Override
  public void drop() {
    half = null;
    chosen = -1;
  }

  /** The picture on the left. */
  public Optional<Picture> left() {
    return desk.beside().isPresent() ? desk.page().map(page -> page) : desk.facing();
  }

  /** The picture on the right. */
  public Optional<Picture> right() {
    return desk.right().map(picture -> picture);
  }

  /** Whether both may show the same, so that they can be lined up without clicks. */
  public boolean sameSide() {
    return desk.beside().isPresent()
        || left().orElse(null) instanceof Photo a
            && right().orElse(null) instanceof Photo b
            && a.side() == b.side();
  }

  /** What map or job keep of the two photos. */
  public Optional<PicturePairs> kept() {
    return left()
        .flatMap(a -> right().map(b -> PicturePairs.Key.of(a.id(), b.id())))
        .flatMap(document.laid().lineUps()::find);
  }

  /** The clicked pairs, the left photo's point first. */
  public List<Spot> spots() {
    return kept()
        .filter(pairs -> pairs.origin() == Origin.CLICKED)
        .map(pairs -> pairs.from(left().orElseThrow().id()))
        .orElse(List.of());
  }

  /** What the kept pairs come to. */
  public Optional<StoredLineUp.Result> result() {
    return kept().flatMap(pairs -> document.carrier().lineUps().result(pairs.a(), pairs.b()));
  }

  /** The line-up from the left photo to the right one, where there is one. */
  public Optional<LineUp> lineUp() {
    return result()
        .filter(StoredLineUp.Lined.class::isInstance)
        .map(lined -> ((StoredLineUp.Lined) lined).kept())
        .map(
            kept ->
                kept.pairs().a().equals(left().orElseThrow().id())
                    ? kept.lineUp()
                    : kept.lineUp().reversed());
  }

  /** The fit of the clicked pairs, where there is one. */
  public Optional<Fit> fit() {
    return result()
        .filter(StoredLineUp.Lined.class::isInstance)
        .flatMap(lined -> ((StoredLineUp.Lined) lined).kept().fit());
  }

  /** How a pair lies to the others, counted from 0. */
  public PairState standing(int pair) {
    return fit()
        .filter(fit -> fit.pairs().size() > fit.model().fewest())
        .map(fit -> fit.errors().get(pair))
        .map(LineUpTool::standing)
        .orElse(PairState.UNKNOWN);
  }

  private static PairState standing(PairError error) {
    if (!error.used()) {
      return PairState.WRONG;
    }
    return error.doubtful() ? PairState.DOUBTFUL : PairState.GOOD;
  }

  /** The pair touched last, counted from 0. */
  public Optional<Integer> chosen() {
    return chosen >= 0 && chosen < spots().size() ? Optional.of(chosen) : Optional.empty();
  }

  public void choose(int pair) {
    hub.check();
    chosen = pair;
    hub.say(Notice.Kind.PAIR_CHOSEN, pair + 1);
    hub.fire(Change.TOOL);
  }

  public Optional<Half> half() {
    return Optional.ofNullable(half);
  }

  boolean isLeft(PictureId picture) {
    return left().filter(known -> known.id().equals(picture)).isPresent();
  }

  /** The pair with a point there, if any. */
  public Optional<Integer> at(PictureId picture, Point at, double reach) {
    List<Spot> spots = spots();
    for (int i = 0; i < spots.size(); i++) {
      if (point(spots.get(i), picture).distance(at) <= 1.5 * reach) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private Point point(Spot spot, PictureId picture) {
    return isLeft(picture) ? spot.onA() : spot.onB();
  }

  /** Zones drawn on the photo itself: what a line-up in the making carries means nothing yet. */
  public Set<HazardZone> zonesAt(Click click) {
    return Set.copyOf(PointerHits.zonesAt(document.watched(), click.picture(), click.at()));
  }

  /** A half of a pair, or the other half of the one that waits; a point that is there is chosen. */
  private void click(Click click) {
    Optional<Integer> there = at(click.picture(), click.at(), click.reach());
    Half waiting = half;
    if (there.isPresent() && waiting == null) {
      choose(there.get());
    } else if (waiting == null || waiting.picture().equals(click.picture())) {
      half = new Half(click.picture(), click.at());
      hub.say(
          Notice.Kind.PAIR_HALF,
          spots().size() + 1,
          (isLeft(click.picture()) ? right() : left()).map(Picture::caption).orElse(""));
      hub.fire(Change.TOOL);
    } else {
      half = null;
      add(
          isLeft(click.picture())
              ? new Spot(click.at(), waiting.at())
              : new Spot(waiting.at(), click.at()));
    }
  }

  private void add(Spot spot) {
    List<Spot> spots = new ArrayList<>(spots());
    spots.add(spot);
    chosen = spots.size() - 1;
    if (put(spots)) {
      hub.say(Notice.Kind.PAIR_SET, spots.size());
    }
    hub.fire(Change.TOOL);
  }

  /** A point of a pair was dragged elsewhere. */
  public void move(int pair, PictureId on, Point to) {
    hub.check();
    List<Spot> spots = moved(pair, on, to);
    chosen = pair;
    if (put(spots)) {
      hub.say(Notice.Kind.PAIR_MOVED, pair + 1);
    }
    hub.fire(Change.TOOL);
  }

  private List<Spot> moved(int pair, PictureId on, Point to) {
    List<Spot> spots = new ArrayList<>(spots());
    Spot old = spots.get(pair);
    spots.set(pair, isLeft(on) ? new Spot(to, old.onB()) : new Spot(old.onA(), to));
    return spots;
  }

  /**
   * How far off a dragged pair would be if it were dropped there, in pixels of the second photo.
   */
  public Optional<Double> offIfMoved(int pair, PictureId on, Point to) {
    Spot spot = moved(pair, on, to).get(pair);
    return lineUp()
        .flatMap(lineUp -> lineUp.carry(spot.onA()))
        .map(carried -> carried.distance(spot.onB()));
  }

  /** Takes the chosen pair away. */
  @Override
  public boolean takeAway() {
    hub.check();
    chosen().ifPresentOrElse(this::takeAway, () -> hub.say(Notice.Kind.NOTHING_CHOSEN));
    return true;
  }

  private void takeAway(int gone) {
    List<Spot> spots = new ArrayList<>(spots());
    spots.remove(gone);
    chosen = -1;
    boolean done = spots.isEmpty() ? remove(kept().orElseThrow().key()) : put(spots);
    if (done) {
      hub.say(Notice.Kind.PAIR_TAKEN_AWAY, gone + 1);
    }
    hub.fire(Change.TOOL);
  }

  /** What was found without clicks. */
  public void take(PictureId a, PictureId b, List<Spot> spots) {
    hub.check();
    PicturePairs pairs =
        new PicturePairs(a, b, Origin.AUTOMATIC, spots, List.of(hand.attests(Evidence.MATCHED)));
    if (put(pairs)) {
      drop();
      hub.say(
          unit.isTiedBy(pairs.key()) ? Notice.Kind.UNIT_LINED_UP : Notice.Kind.LINED_UP,
          spots.size());
    }
    hub.fire(Change.TOOL);
  }

  /** It could not be lined up without clicks, for this reason. */
  public void refuse(String reason) {
    hub.say(Notice.Kind.NOT_LINED_UP, reason);
  }

  /** Takes a half back; tells whether there was one. */
  @Override
  public boolean back() {
    boolean waited = half != null;
    half = null;
    if (waited) {
      hub.fire(Change.TOOL);
    }
    return waited;
  }

  private boolean put(List<Spot> spots) {
    PictureId a = left().orElseThrow().id();
    PictureId b = right().orElseThrow().id();
    return put(
        kept()
            .filter(pairs -> pairs.origin() == Origin.CLICKED)
            .map(
                pairs ->
                    new PicturePairs(a, b, Origin.CLICKED, spots, pairs.evidence())
                        .confirmedBy(hand.attests()))
            .orElseGet(
                () -> new PicturePairs(a, b, Origin.CLICKED, spots, List.of(hand.attests()))));
  }

  /** Pairs of two photos of the map belong to the map, those of a photo of the unit to the job. */
  private boolean put(PicturePairs pairs) {
    return unit.isTiedBy(pairs.key())
        ? unit.tie(pairs)
        : document.apply(MapTables.LINE_UPS.put(pairs));
  }

  private boolean remove(PicturePairs.Key pairs) {
    return unit.isTiedBy(pairs)
        ? unit.untie(pairs)
        : document.apply(MapTables.LINE_UPS.remove(pairs));
  }

  /** Whether pairs of the two photos can be kept. */
  public boolean mayKeep() {
    boolean ofUnit =
        left().filter(photo -> document.isOwn(photo.id())).isPresent()
            || right().filter(photo -> document.isOwn(photo.id())).isPresent();
    return ofUnit ? unit.mayChange() : !document.isReadOnly();
  }
}
