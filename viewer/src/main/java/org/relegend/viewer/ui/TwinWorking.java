package org.relegend.viewer.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.scan.PhotoBrightness;
import org.relegend.scan.PhotoFile;
import org.relegend.scan.PictureException;
import org.relegend.twin.Brightness;
import org.relegend.twin.Seed;
import org.relegend.viewer.control.Shelf;
import org.relegend.viewer.control.Texts;
import org.relegend.viewer.mode.lineup.LineUpTool;
import org.relegend.viewer.mode.twins.PredictedPlaces;
import org.relegend.viewer.mode.twins.TwinTool;
import org.relegend.viewer.session.Following;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.Job;
import org.relegend.viewer.work.Jobs;
import org.relegend.viewer.work.Watch;

/**
 * Works out which twins follow from those that are known, and where unplaced ones should lie: away
 * from the event thread, anew after each change that matters; what comes late is dropped.
 */
final class TwinWorking {
  /** What a photo shows, kept while its file stays as it is. */
  private record Seen(Path file, FileTime changed, Brightness brightness) {}

  private final Session session;
  private final Shelf shelf;
  private final Jobs jobs;
  private final StatusLine status;
  private @Nullable Job following;
  private @Nullable Job predicting;
  private @Nullable BoardMap worked;
  private Optional<Seed> workedFrom = Optional.empty();
  private boolean workedAlone;
  private boolean delivered;
  private volatile @Nullable Seen seen;

  TwinWorking(Session session, Shelf shelf, Jobs jobs, StatusLine status) {
    this.session = session;
    this.shelf = shelf;
    this.jobs = jobs;
    this.status = status;
  }

  /** Whether it is still being worked out what follows. */
  boolean isBusy() {
    return following != null && !following.over();
  }

  /**
   * Works out what follows, unless that is done or on its way for the map as it is.
   *
   * @param asked whether the technician waits for it: then they see how far it is and can stop it
   */
  void follow(boolean asked) {
    BoardMap map = session.map();
    Optional<Seed> said = session.room(TwinTool.class).said();
    boolean alone = session.room(TwinTool.class).alone();
    if (!isWorked(said, alone) || asked && !isBusy() && !delivered) {
      begin(map, said, alone);
    }
    if (asked && following != null) {
      status.watch(following);
    }
  }

  private boolean isWorked(Optional<Seed> said, boolean alone) {
    return worked != null
        && session.room(TwinTool.class).isOfNow(worked)
        && workedFrom.equals(said)
        && workedAlone == alone;
  }

  private void begin(BoardMap map, Optional<Seed> said, boolean alone) {
    stop(following);
    worked = map;
    workedFrom = said;
    workedAlone = alone;
    delivered = false;
    following =
        jobs.run(
            Texts.of("twins.working"),
            watch -> Following.of(map, said, alone),
            found -> {
              delivered = true;
              session.room(TwinTool.class).take(map, found);
            },
            problem -> {
              session.room(TwinTool.class).take(map, Following.NONE);
              session
                  .room(LineUpTool.class)
                  .refuse(Texts.of("error.unexpected", problem.toString()));
            });
  }

  /**
   * Works out where unplaced twins should lie on the photo shown.
   *
   * @param asked whether the technician waits for it
   */
  void predict(boolean asked) {
    stop(predicting);
    Optional<Photo> photo = session.desk().photo();
    if (!session.room(PredictedPlaces.class).areShown() || photo.isEmpty()) {
      return;
    }
    BoardMap map = session.map();
    PictureId on = photo.get().id();
    Path file = shelf.fileOf(photo.get());
    Following known = session.document().following();
    Job job =
        jobs.run(
            Texts.of("ghosts.working"),
            watch -> PredictedPlaces.work(map, on, known, brightness(file, watch)),
            session.room(PredictedPlaces.class)::take,
            problem ->
                session
                    .room(PredictedPlaces.class)
                    .take(
                        new PredictedPlaces.Worked(
                            on, List.of(), Texts.of("error.unexpected", problem.toString()), 0)));
    predicting = job;
    if (asked) {
      status.watch(job);
    }
  }

  private static void stop(@Nullable Job job) {
    if (job != null) {
      job.cancel();
    }
  }

  /** None where the file can't be read: then the layouts alone have to do. */
  private Optional<Brightness> brightness(Path file, Watch watch) {
    try {
      FileTime changed = Files.getLastModifiedTime(file);
      Seen known = seen;
      if (known == null || !known.file().equals(file) || !known.changed().equals(changed)) {
        PhotoBrightness photo = PhotoBrightness.read(PhotoFile.probe(file), watch::at);
        known =
            new Seen(file, changed, new Brightness(photo.width(), photo.height(), photo.pixels()));
        seen = known;
      }
      return Optional.of(known.brightness());
    } catch (IOException | PictureException unreadable) {
      return Optional.empty();
    }
  }
}
