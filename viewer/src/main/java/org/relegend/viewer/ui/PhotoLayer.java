package org.relegend.viewer.ui;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.relegend.lineup.LineUp;
import org.relegend.lineup.PlacementCarrier;
import org.relegend.lineup.Transform;
import org.relegend.lineup.WarpedPicture;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.OpenedPictures;
import org.relegend.viewer.mode.lineup.LineUpTool;
import org.relegend.viewer.paint.LayerOverlay;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.BackgroundTask;
import org.relegend.viewer.work.LatestJob;
import org.relegend.viewer.work.TaskRunner;

/**
 * Lays another photo of the board over the one shown, as a line-up carries it: the other side lies
 * as seen through the board. Asked again it covers wholly, so that the two can be blinked; then it
 * is gone. The warped photo is made away from the event thread.
 */
final class PhotoLayer {
  /** Pixels of the warped photo: enough to compare by, not to read markings. */
  private static final double MOST_PIXELS = 3_000_000;

  private static final float HALF = 0.5f;

  private final Session session;
  private final OpenedPictures shelf;
  private final LatestJob latest;
  private final PicturePane pane;
  private final Consumer<BackgroundTask> watch;
  private @Nullable BufferedImage image;
  private @Nullable PictureId over;
  private float share;

  PhotoLayer(
      Session session,
      OpenedPictures shelf,
      TaskRunner jobs,
      PicturePane pane,
      Consumer<BackgroundTask> watch) {
    this.session = session;
    this.shelf = shelf;
    latest = new LatestJob(jobs);
    this.pane = pane;
    this.watch = watch;
  }

  /** Half, whole, none, in turn. */
  void step() {
    BufferedImage made = image;
    if (made != null && session.desk().photo().filter(p -> p.id().equals(over)).isPresent()) {
      share += HALF;
      if (share > 1) {
        drop();
      } else {
        pane.lay(Optional.of(new LayerOverlay(made, share)));
      }
    } else {
      begin();
    }
  }

  /** Takes the layer away: another photo lies there, or the line-ups changed. */
  void drop() {
    latest.cancel();
    image = null;
    over = null;
    pane.lay(Optional.empty());
  }

  private void begin() {
    drop();
    Optional<Photo> shown = session.desk().photo();
    Optional<Picture> other = shown.flatMap(this::other);
    if (shown.isEmpty() || other.isEmpty()) {
      session.room(LineUpTool.class).refuse(Messages.of("layer.none"));
      return;
    }
    Photo below = shown.get();
    LineUp way = way(below, other.get()).orElseThrow();
    Path file = shelf.fileOf(other.get());
    watch.accept(
        latest.run(
            Messages.of("layer.working"),
            watch -> warped(below, file, way),
            made -> show(below, made),
            problem ->
                session.room(LineUpTool.class).refuse(String.valueOf(problem.getMessage()))));
  }

  /** The photo being lined up, else the other side, else any that line-ups reach. */
  private Optional<Picture> other(Photo shown) {
    return session
        .desk()
        .facing()
        .filter(photo -> way(shown, photo).isPresent())
        .or(
            () ->
                session.desk().photos().stream()
                    .filter(photo -> !photo.id().equals(shown.id()))
                    .filter(photo -> way(shown, photo).isPresent())
                    .min(
                        java.util.Comparator.comparing(
                            photo -> ((Photo) photo).side() == shown.side())));
  }

  private Optional<LineUp> way(Photo from, Picture to) {
    Point middle = new Point(from.width() / 2, from.height() / 2);
    return session
        .document()
        .carrier()
        .carry(from.id(), middle, to.id())
        .map(PlacementCarrier.Chained::chain);
  }

  private static BufferedImage warped(Photo below, Path file, LineUp way) throws IOException {
    double factor = Math.min(1, Math.sqrt(MOST_PIXELS / (below.width() * below.height())));
    LineUp fromSmall = LineUp.exact(Transform.scale(1 / factor)).then(way);
    return WarpedPicture.of(
        ImageIO.read(file.toFile()),
        Math.max(1, (int) Math.rint(factor * below.width())),
        Math.max(1, (int) Math.rint(factor * below.height())),
        fromSmall);
  }

  private void show(Photo below, BufferedImage made) {
    if (session.desk().photo().filter(below::equals).isPresent()) {
      image = made;
      over = below.id();
      share = HALF;
      pane.lay(Optional.of(new LayerOverlay(made, share)));
    }
  }
}
