package org.relegend.viewer.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Box;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.viewer.control.ModeDrag;
import org.relegend.viewer.control.ModeView;
import org.relegend.viewer.control.PointerPosition;
import org.relegend.viewer.mode.look.LookTool;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.paint.PredictedPlaceOverlay;
import org.relegend.viewer.session.Click;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.PlacementCorrections;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.view.ViewState;

/** The pointer on one picture, told to the session in picture units. */
final class SessionPointer implements PictureTool {
  /** What a drag that was taken is about. */
  private sealed interface Drag {
    record Marks(Point from) implements Drag {}

    record Band(Point from) implements Drag {}

    record OfMode(ModeDrag drag) implements Drag {}
  }

  private final Session session;
  private final Function<Mode, ModeView> views;
  private final PictureId picture;
  private final Consumer<List<Overlay>> preview;
  private @Nullable Drag drag;
  private Optional<Point> pointer = Optional.empty();

  /**
   * @param views how each mode shows itself
   * @param preview shows what is half done over the marks
   */
  SessionPointer(
      Session session,
      Function<Mode, ModeView> views,
      PictureId picture,
      Consumer<List<Overlay>> preview) {
    this.session = session;
    this.views = views;
    this.picture = picture;
    this.preview = preview;
  }

  private ModeView view() {
    return views.apply(session.mode());
  }

  /** What is half done in the current mode. */
  List<Overlay> halfDone() {
    return view().overlays(picture, pointer);
  }

  /** Where the pointer is; none while it is elsewhere. */
  Optional<Point> pointer() {
    return pointer;
  }

  private Click clicked(PointerPosition at) {
    return new Click(picture, at.at(), at.reach(), at.shift());
  }

  @Override
  public void approach(ViewState to, Runnable move) {
    session.approach(picture, to.visible(), to.scale() / to.fitScale(), move);
  }

  @Override
  public boolean mayMagnify(Box shown) {
    return session.mayMagnify(picture, shown);
  }

  @Override
  public void click(PointerPosition at) {
    session.click(clicked(at));
  }

  @Override
  public boolean dragBegins(PointerPosition at) {
    Optional<ModeDrag> own = view().drag(picture, at);
    if (own.isPresent()) {
      drag = new Drag.OfMode(own.get());
    } else if (at.shift()) {
      drag = new Drag.Band(at.at());
    } else if (session.room(LookTool.class).grab(clicked(at))) {
      drag = new Drag.Marks(at.at());
    } else {
      drag = null;
    }
    return drag != null;
  }

  @Override
  public void dragged(PointerPosition at) {
    if (drag instanceof Drag.Marks marks) {
      preview.accept(List.of(movedMarks(marks.from(), at.at())));
    } else if (drag instanceof Drag.Band band) {
      preview.accept(List.of(new BandOverlay(Box.around(List.of(band.from(), at.at())))));
    } else if (drag instanceof Drag.OfMode own) {
      preview.accept(own.drag().preview(at.at()));
    }
  }

  private Overlay movedMarks(Point from, Point to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    List<PredictedPlaceOverlay.Predicted> ghosts =
        session.selection().marked().stream()
            .filter(key -> key.picture().equals(picture))
            .map(session.map().placements()::find)
            .flatMap(Optional::stream)
            .map(place -> moved(place, dx, dy))
            .toList();
    return new PredictedPlaceOverlay(ghosts);
  }

  private PredictedPlaceOverlay.Predicted moved(Placement place, double dx, double dy) {
    List<Point> outline = place.outline().stream().map(point -> point.plus(dx, dy)).toList();
    return new PredictedPlaceOverlay.Predicted(
        place.at().plus(dx, dy), 0, outline, session.map().nameOf(place.subject()));
  }

  @Override
  public void dropped(PointerPosition at) {
    if (drag instanceof Drag.Marks marks) {
      session
          .room(PlacementCorrections.class)
          .move(picture, at.at().x() - marks.from().x(), at.at().y() - marks.from().y());
    } else if (drag instanceof Drag.Band band) {
      session.room(LookTool.class).markWithin(picture, band.from(), at.at(), at.control());
    } else if (drag instanceof Drag.OfMode own) {
      own.drag().drop(at.at());
    }
    dragCancelled();
  }

  @Override
  public void dragCancelled() {
    drag = null;
    preview.accept(List.of());
  }

  @Override
  public void moved(PointerPosition at) {
    pointer = Optional.of(at.at());
    if (view().followsPointer(picture)) {
      preview.accept(List.of());
    }
  }

  @Override
  public void left() {
    pointer = Optional.empty();
  }
}
