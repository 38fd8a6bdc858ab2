package org.relegend.viewer.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Box;
import org.relegend.map.HazardZone;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.ZoneId;
import org.relegend.viewer.paint.GhostOverlay;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.paint.PairOverlay;
import org.relegend.viewer.session.Click;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.Tool;

/** The pointer on one picture, told to the session in picture units. */
final class PictureHand implements PictureTool {
  /** What a drag that was taken is about. */
  private sealed interface Drag {
    record Marks(Point from) implements Drag {}

    record Band(Point from) implements Drag {}

    record Corner(ZoneId zone, int corner) implements Drag {}

    record Pair(int pair) implements Drag {}
  }

  private final Session session;
  private final PictureId picture;
  private final Consumer<List<Overlay>> preview;
  private @Nullable Drag drag;
  private Optional<Point> pointer = Optional.empty();

  /**
   * @param preview shows what is half done over the marks
   */
  PictureHand(Session session, PictureId picture, Consumer<List<Overlay>> preview) {
    this.session = session;
    this.picture = picture;
    this.preview = preview;
  }

  /** Where the pointer is; none while it is elsewhere. */
  Optional<Point> pointer() {
    return pointer;
  }

  private Click clicked(Pointer at) {
    return new Click(picture, at.at(), at.reach(), at.shift());
  }

  @Override
  public void click(Pointer at) {
    session.click(clicked(at));
  }

  @Override
  public boolean dragBegins(Pointer at) {
    Optional<Drag.Corner> corner = cornerAt(at);
    Optional<Drag.Pair> pair = pairAt(at);
    if (pair.isPresent()) {
      drag = pair.get();
    } else if (at.shift()) {
      drag = new Drag.Band(at.at());
    } else if (corner.isPresent()) {
      drag = corner.get();
    } else if (session.grab(clicked(at))) {
      drag = new Drag.Marks(at.at());
    } else {
      drag = null;
    }
    return drag != null;
  }

  /** A corner of a zone can be dragged while zones are being outlined. */
  private Optional<Drag.Corner> cornerAt(Pointer at) {
    if (session.tool() != Tool.ZONE || session.document().isReadOnly()) {
      return Optional.empty();
    }
    for (HazardZone zone : session.map().zones()) {
      for (int i = 0; zone.picture().equals(picture) && i < zone.outline().size(); i++) {
        if (zone.outline().get(i).distance(at.at()) <= 1.5 * at.reach()) {
          return Optional.of(new Drag.Corner(zone.id(), i));
        }
      }
    }
    return Optional.empty();
  }

  /** A point of a pair can be dragged while photos are lined up. */
  private Optional<Drag.Pair> pairAt(Pointer at) {
    return session.tool() == Tool.LINE_UP && session.pairing().mayKeep()
        ? session.pairing().at(picture, at.at(), at.reach()).map(Drag.Pair::new)
        : Optional.empty();
  }

  private Overlay movedPair(int pair, Point to) {
    String number = Integer.toString(pair + 1);
    String off =
        session
            .pairing()
            .offIfMoved(pair, picture, to)
            .map(pixels -> Texts.of("pairs.dragged", number, Math.round(pixels)))
            .orElse(number);
    return new PairOverlay(List.of(new PairOverlay.Spot(to, off, PairOverlay.Look.HALF, true, 0)));
  }

  @Override
  public void dragged(Pointer at) {
    if (drag instanceof Drag.Marks marks) {
      preview.accept(List.of(movedMarks(marks.from(), at.at())));
    } else if (drag instanceof Drag.Band band) {
      preview.accept(List.of(new BandOverlay(Box.around(List.of(band.from(), at.at())))));
    } else if (drag instanceof Drag.Corner corner) {
      preview.accept(draftOf(corner, at.at()));
    } else if (drag instanceof Drag.Pair pair) {
      preview.accept(List.of(movedPair(pair.pair(), at.at())));
    }
  }

  private Overlay movedMarks(Point from, Point to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    List<GhostOverlay.Ghost> ghosts =
        session.selection().marked().stream()
            .filter(key -> key.picture().equals(picture))
            .map(session.map().placements()::find)
            .flatMap(Optional::stream)
            .map(place -> moved(place, dx, dy))
            .toList();
    return new GhostOverlay(ghosts);
  }

  private GhostOverlay.Ghost moved(Placement place, double dx, double dy) {
    List<Point> outline = place.outline().stream().map(point -> point.plus(dx, dy)).toList();
    return new GhostOverlay.Ghost(
        place.at().plus(dx, dy), 0, outline, session.map().nameOf(place.subject()));
  }

  private List<Overlay> draftOf(Drag.Corner corner, Point to) {
    return session
        .map()
        .zones()
        .find(corner.zone())
        .map(
            zone -> {
              List<Point> corners = new java.util.ArrayList<>(zone.outline());
              corners.set(corner.corner(), to);
              corners.add(corners.get(0));
              return List.<Overlay>of(new DraftOverlay(corners, Optional.empty()));
            })
        .orElse(List.of());
  }

  @Override
  public void dropped(Pointer at) {
    if (drag instanceof Drag.Marks marks) {
      session
          .corrections()
          .move(picture, at.at().x() - marks.from().x(), at.at().y() - marks.from().y());
    } else if (drag instanceof Drag.Band band) {
      session.markWithin(picture, band.from(), at.at(), at.control());
    } else if (drag instanceof Drag.Corner corner) {
      session.moveCorner(corner.zone(), corner.corner(), at.at());
    } else if (drag instanceof Drag.Pair pair) {
      session.pairing().move(pair.pair(), picture, at.at());
    }
    dragCancelled();
  }

  @Override
  public void dragCancelled() {
    drag = null;
    preview.accept(List.of());
  }

  @Override
  public void moved(Pointer at) {
    pointer = Optional.of(at.at());
    if (session.pinning().first(picture).isPresent()
        || !session.outlining().corners(picture).isEmpty()) {
      preview.accept(List.of());
    }
  }

  @Override
  public void left() {
    pointer = Optional.empty();
  }
}
