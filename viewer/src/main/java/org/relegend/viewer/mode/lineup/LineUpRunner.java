package org.relegend.viewer.mode.lineup;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.relegend.lineup.PhotoResult;
import org.relegend.map.Picture;
import org.relegend.map.PicturePairs;
import org.relegend.map.PicturePairs.Spot;
import org.relegend.scan.MatchImage;
import org.relegend.scan.PictureException;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.ModeContext;
import org.relegend.viewer.control.OpenedPictures;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.BackgroundTask;
import org.relegend.viewer.work.LatestJob;
import org.relegend.viewer.work.TaskMonitor;

/** Lines two photos up without clicks, away from the event thread; what comes late is dropped. */
public final class LineUpRunner {
  private final Session session;
  private final OpenedPictures shelf;
  private final LatestJob latest;
  private final Consumer<BackgroundTask> watch;
  private final BooleanSupplier open;

  /** Photos that were tried: once is enough, unless one asks for it. */
  private final Set<PicturePairs.Key> tried = new HashSet<>();

  public LineUpRunner(ModeContext context) {
    session = context.session();
    shelf = context.shelf();
    latest = new LatestJob(context.jobs());
    watch = context.watch();
    open = context.open();
  }

  /** Tries it where nothing is known of the two photos yet and both show the same side. */
  public void first() {
    boolean untold =
        session.isIn(LineUpTool.class)
            && session.room(LineUpTool.class).kept().isEmpty()
            && session.room(LineUpTool.class).sameSide()
            && session.room(LineUpTool.class).mayKeep();
    if (untold && tried.add(key())) {
      again();
    }
  }

  private PicturePairs.Key key() {
    return PicturePairs.Key.of(
        session.room(LineUpTool.class).left().orElseThrow().id(),
        session.room(LineUpTool.class).right().orElseThrow().id());
  }

  /** What was tried elsewhere isn't tried by itself again. */
  public void tried() {
    if (session.room(LineUpTool.class).left().isPresent()
        && session.room(LineUpTool.class).right().isPresent()) {
      tried.add(key());
    }
  }

  /** Tries it whatever is known. */
  public void again() {
    Optional<Picture> left = session.room(LineUpTool.class).left();
    Optional<Picture> right = session.room(LineUpTool.class).right();
    if (left.isEmpty() || right.isEmpty()) {
      return;
    }
    if (!session.room(LineUpTool.class).sameSide()) {
      session.room(LineUpTool.class).refuse(Messages.of("pairs.sides"));
      return;
    }
    Picture a = left.get();
    Picture b = right.get();
    watch.accept(
        latest.run(
            Messages.of("pairs.working"),
            watch -> result(a, b, watch),
            result -> take(a, b, result),
            problem ->
                session.room(LineUpTool.class).refuse(String.valueOf(problem.getMessage()))));
  }

  private PhotoResult result(Picture a, Picture b, TaskMonitor watch) throws PictureException {
    MatchImage first = MatchImage.of(shelf.fileOf(a), a, done -> watch.at(0.25 * done));
    MatchImage second = MatchImage.of(shelf.fileOf(b), b, done -> watch.at(0.25 + 0.25 * done));
    return first.lineUp(second, () -> !watch.at(0.5));
  }

  /** Of the files of two photos. */
  public static PhotoResult result(Path a, Path b, TaskMonitor watch) throws PictureException {
    MatchImage first = MatchImage.of(a, done -> watch.at(0.25 * done));
    MatchImage second = MatchImage.of(b, done -> watch.at(0.25 + 0.25 * done));
    return first.lineUp(second, () -> !watch.at(0.5));
  }

  private void take(Picture a, Picture b, PhotoResult result) {
    boolean still =
        open.getAsBoolean()
            && session.isIn(LineUpTool.class)
            && session.room(LineUpTool.class).left().filter(a::equals).isPresent()
            && session.room(LineUpTool.class).right().filter(b::equals).isPresent();
    if (!still) {
      return;
    }
    if (result instanceof PhotoResult.Aligned aligned) {
      List<Spot> spots =
          aligned.kept().stream().map(pair -> new Spot(pair.from(), pair.to())).toList();
      session.room(LineUpTool.class).take(a.id(), b.id(), spots);
    } else {
      session.room(LineUpTool.class).refuse(((PhotoResult.Unaligned) result).message());
    }
  }
}
