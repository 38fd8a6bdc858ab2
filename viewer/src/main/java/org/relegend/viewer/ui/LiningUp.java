package org.relegend.viewer.ui;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import org.relegend.lineup.PhotoResult;
import org.relegend.map.Picture;
import org.relegend.map.PicturePairs;
import org.relegend.map.PicturePairs.Spot;
import org.relegend.scan.Matchable;
import org.relegend.scan.PictureException;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.Tool;
import org.relegend.viewer.work.Job;
import org.relegend.viewer.work.Jobs;
import org.relegend.viewer.work.Watch;

/** Lines two photos up without clicks, away from the event thread; what comes late is dropped. */
final class LiningUp {
  private final Session session;
  private final Shelf shelf;
  private final Jobs jobs;
  private final StatusLine status;
  private final BooleanSupplier open;
  private @Nullable Job running;

  /** Photos that were tried: once is enough, unless one asks for it. */
  private final Set<PicturePairs.Key> tried = new HashSet<>();

  /**
   * @param open whether the map is still open: what comes later is dropped
   */
  LiningUp(Session session, Shelf shelf, Jobs jobs, StatusLine status, BooleanSupplier open) {
    this.session = session;
    this.shelf = shelf;
    this.jobs = jobs;
    this.status = status;
    this.open = open;
  }

  /** Tries it where nothing is known of the two photos yet and both show the same side. */
  void first() {
    boolean untold =
        session.tool() == Tool.LINE_UP
            && session.pairing().kept().isEmpty()
            && session.pairing().sameSide()
            && session.pairing().mayKeep();
    if (untold && tried.add(key())) {
      again();
    }
  }

  private PicturePairs.Key key() {
    return PicturePairs.Key.of(
        session.pairing().left().orElseThrow().id(), session.pairing().right().orElseThrow().id());
  }

  /** What was tried elsewhere isn't tried by itself again. */
  void tried() {
    if (session.pairing().left().isPresent() && session.pairing().right().isPresent()) {
      tried.add(key());
    }
  }

  /** Tries it whatever is known. */
  void again() {
    Optional<Picture> left = session.pairing().left();
    Optional<Picture> right = session.pairing().right();
    if (left.isEmpty() || right.isEmpty()) {
      return;
    }
    if (!session.pairing().sameSide()) {
      session.pairing().refuse(Texts.of("pairs.sides"));
      return;
    }
    stop();
    Picture a = left.get();
    Picture b = right.get();
    Job job =
        jobs.run(
            Texts.of("pairs.working"),
            watch -> result(a, b, watch),
            result -> take(a, b, result),
            problem -> session.pairing().refuse(String.valueOf(problem.getMessage())));
    running = job;
    status.watch(job);
  }

  private void stop() {
    if (running != null) {
      running.cancel();
    }
  }

  private PhotoResult result(Picture a, Picture b, Watch watch) throws PictureException {
    Matchable first = Matchable.of(shelf.fileOf(a), a, done -> watch.at(0.25 * done));
    Matchable second = Matchable.of(shelf.fileOf(b), b, done -> watch.at(0.25 + 0.25 * done));
    return first.lineUp(second, () -> !watch.at(0.5));
  }

  /** Of the files of two photos. */
  static PhotoResult result(Path a, Path b, Watch watch) throws PictureException {
    Matchable first = Matchable.of(a, done -> watch.at(0.25 * done));
    Matchable second = Matchable.of(b, done -> watch.at(0.25 + 0.25 * done));
    return first.lineUp(second, () -> !watch.at(0.5));
  }

  private void take(Picture a, Picture b, PhotoResult result) {
    boolean still =
        open.getAsBoolean()
            && session.tool() == Tool.LINE_UP
            && session.pairing().left().filter(a::equals).isPresent()
            && session.pairing().right().filter(b::equals).isPresent();
    if (!still) {
      return;
    }
    if (result instanceof PhotoResult.Aligned aligned) {
      List<Spot> spots =
          aligned.kept().stream().map(pair -> new Spot(pair.from(), pair.to())).toList();
      session.pairing().take(a.id(), b.id(), spots);
    } else {
      session.pairing().refuse(((PhotoResult.Unaligned) result).message());
    }
  }
}
