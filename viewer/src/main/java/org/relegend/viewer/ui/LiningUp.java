package org.relegend.viewer.ui;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import org.relegend.lineup.GreyImage;
import org.relegend.lineup.PhotoLineUp;
import org.relegend.lineup.PhotoResult;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PicturePairs;
import org.relegend.map.PicturePairs.Spot;
import org.relegend.scan.PhotoBrightness;
import org.relegend.scan.PhotoFile;
import org.relegend.scan.PictureException;
import org.relegend.scan.Progress;
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
    Photo a = (Photo) left.get();
    Photo b = (Photo) right.get();
    Job job =
        jobs.run(
            Texts.of("pairs.working"),
            watch -> result(shelf.fileOf(a), shelf.fileOf(b), watch),
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

  static PhotoResult result(Path a, Path b, Watch watch) throws PictureException {
    GreyImage first = grey(a, fraction -> watch.at(0.25 * fraction));
    GreyImage second = grey(b, fraction -> watch.at(0.25 + 0.25 * fraction));
    return PhotoLineUp.of(first, second, () -> !watch.at(0.5));
  }

  private static GreyImage grey(Path file, Progress progress) throws PictureException {
    PhotoBrightness photo = PhotoBrightness.read(PhotoFile.probe(file), progress);
    return GreyImage.of(photo.width(), photo.height(), photo.pixels());
  }

  private void take(Photo a, Photo b, PhotoResult result) {
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
