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
import org.relegend.twin.Brightness;
import org.relegend.twin.Seed;
import org.relegend.viewer.control.Shelf;
import org.relegend.viewer.control.Texts;
import org.relegend.viewer.mode.lineup.LineUpTool;
import org.relegend.viewer.session.Following;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.Job;
import org.relegend.viewer.work.Jobs;
import org.relegend.viewer.work.LatestJob;
import org.relegend.viewer.work.Watch;

/**
 * Works out which twins follow from those that are known, and where unplaced ones should lie: away
 * from the event thread, anew after each change that matters; what comes late is dropped.
 */
public final class TwinRunner {
  /** What a photo shows, kept while its file stays as it is. */
  private record Seen(Path file, FileTime changed, Brightness brightness) {}

  private final Session session;
  private final Shelf shelf;
  private final Consumer<Job> shown;
  private final LatestJob following;
  private final LatestJob predicting;
  private @Nullable BoardMap worked;
  private Optional<Seed> workedFrom = Optional.empty();
  private boolean workedAlone;
  private boolean delivered;
  private volatile @Nullable Seen seen;

  public TwinRunner(Session session, Shelf shelf, Jobs jobs, Consumer<Job> shown) {
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
    Optional<Seed> said = session.room(TwinTool.class).said();
    boolean alone = session.room(TwinTool.class).alone();
    if (!isWorked(said, alone) || asked && !isBusy() && !delivered) {
      begin(map, said, alone);
    }
    if (asked) {
      following.begun().ifPresent(shown);
    }
  }

  private boolean isWorked(Optional<Seed> said, boolean alone) {
    return worked != null
        && session.room(TwinTool.class).isOfNow(worked)
        && workedFrom.equals(said)
        && workedAlone == alone;
  }

  private void begin(BoardMap map, Optional<Seed> said, boolean alone) {
    worked = map;
    workedFrom = said;
    workedAlone = alone;
    delivered = false;
    following.run(
        Texts.of("twins.working"),
        watch -> Following.of(map, said, alone),
        found -> {
          delivered = true;
          session.room(TwinTool.class).take(map, found);
        },
        problem -> {
          session.room(TwinTool.class).take(map, Following.NONE);
          session.room(LineUpTool.class).refuse(Texts.of("error.unexpected", problem.toString()));
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
    Following known = session.document().following();
    Job job =
        predicting.run(
            Texts.of("ghosts.working"),
            watch -> PredictedPlaces.work(map, on, known, brightness(file, watch)),
            session.room(PredictedPlaces.class)::take,
            problem ->
                session
                    .room(PredictedPlaces.class)
                    .take(
                        new PredictedPlaces.Worked(
                            on, List.of(), Texts.of("error.unexpected", problem.toString()), 0)));
    if (asked) {
      shown.accept(job);
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
