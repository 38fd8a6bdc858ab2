package org.relegend.viewer.mode.twins;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.scan.PhotoBrightness;
import org.relegend.scan.PhotoFile;
import org.relegend.scan.PictureException;
import org.relegend.twin.BrightnessImage;
import org.relegend.twin.TwinSeed;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.OpenedPictures;
import org.relegend.viewer.mode.lineup.LineUpTool;
import org.relegend.viewer.session.DerivedTwins;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.BackgroundTask;
import org.relegend.viewer.work.LatestJob;
import org.relegend.viewer.work.TaskMonitor;
import org.relegend.viewer.work.TaskRunner;

/**
 * Works out which twins follow from those that are known, and where unplaced ones should lie: away
 * from the event thread, anew after each change that matters; what comes late is dropped.
 */
public final class TwinRunner {
  /** What a photo shows, kept while its file stays as it is. */
  private record Seen(Path file, FileTime changed, BrightnessImage brightness) {}

  private final Session session;
  private final OpenedPictures shelf;
  private final Consumer<BackgroundTask> shown;
  private final LatestJob following;
  private final LatestJob predicting;
  private @Nullable BoardMap worked;
  private Optional<TwinSeed> workedFrom = Optional.empty();
  private boolean workedAlone;
  private boolean delivered;
  private volatile @Nullable Seen seen;

  public TwinRunner(
      Session session, OpenedPictures shelf, TaskRunner jobs, Consumer<BackgroundTask> shown) {
    this.session = session;
    this.shelf = shelf;
    this.shown = shown;
    following = new LatestJob(jobs);
    predicting = new LatestJob(jobs);
  }

  /** Whether it is still being worked out what follows. */
  public boolean isBusy() {
    return following.isRunning();
  }

  /**
   * Works out what follows, unless that is done or on its way for the map as it is.
   *
   * @param asked whether the technician waits for it: then they see how far it is and can stop it
   */
  public void follow(boolean asked) {
    BoardMap map = session.map();
    Optional<TwinSeed> declared = session.room(TwinTool.class).lastDeclared();
    boolean alone = session.room(TwinTool.class).alone();
    if (!isWorked(declared, alone) || asked && !isBusy() && !delivered) {
      begin(map, declared, alone);
    }
    if (asked) {
      following.begun().ifPresent(shown);
    }
  }

  private boolean isWorked(Optional<TwinSeed> declared, boolean alone) {
    return worked != null
        && session.room(TwinTool.class).isOfNow(worked)
        && workedFrom.equals(declared)
        && workedAlone == alone;
  }

  private void begin(BoardMap map, Optional<TwinSeed> declared, boolean alone) {
    worked = map;
    workedFrom = declared;
    workedAlone = alone;
    delivered = false;
    following.run(
        Messages.of("twins.working"),
        watch -> DerivedTwins.of(map, declared, alone),
        found -> {
          delivered = true;
          session.room(TwinTool.class).take(map, found);
        },
        problem -> {
          session.room(TwinTool.class).take(map, DerivedTwins.NONE);
          session
              .room(LineUpTool.class)
              .refuse(Messages.of("error.unexpected", problem.toString()));
        });
  }

  /**
   * Works out where unplaced twins should lie on the photo shown.
   *
   * @param asked whether the technician waits for it
   */
  public void predict(boolean asked) {
    predicting.cancel();
    Optional<Photo> photo = session.desk().photo();
    if (!session.room(PredictedPlaces.class).areShown() || photo.isEmpty()) {
      return;
    }
    BoardMap map = session.map();
    PictureId on = photo.get().id();
    Path file = shelf.fileOf(photo.get());
    DerivedTwins known = session.document().following();
    BackgroundTask job =
        predicting.run(
            Messages.of("ghosts.working"),
            watch -> PredictedPlaces.work(map, on, known, brightness(file, watch)),
            session.room(PredictedPlaces.class)::take,
            problem ->
                session
                    .room(PredictedPlaces.class)
                    .take(
                        new PredictedPlaces.Worked(
                            on,
                            List.of(),
                            Messages.of("error.unexpected", problem.toString()),
                            0)));
    if (asked) {
      shown.accept(job);
    }
  }

  /** None where the file can't be read: then the layouts alone have to do. */
  private Optional<BrightnessImage> brightness(Path file, TaskMonitor watch) {
    try {
      FileTime changed = Files.getLastModifiedTime(file);
      Seen known = seen;
      if (known == null || !known.file().equals(file) || !known.changed().equals(changed)) {
        PhotoBrightness photo = PhotoBrightness.read(PhotoFile.probe(file), watch::at);
        known =
            new Seen(
                file, changed, new BrightnessImage(photo.width(), photo.height(), photo.pixels()));
        seen = known;
      }
      return Optional.of(known.brightness());
    } catch (IOException | PictureException unreadable) {
      return Optional.empty();
    }
  }
}
