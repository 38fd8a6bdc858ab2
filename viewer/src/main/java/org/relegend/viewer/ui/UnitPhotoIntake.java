package org.relegend.viewer.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.relegend.lineup.PhotoResult;
import org.relegend.map.BoardMap;
import org.relegend.map.EditGroup;
import org.relegend.map.MapTables;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs.Spot;
import org.relegend.scan.Intake;
import org.relegend.viewer.control.Shelf;
import org.relegend.viewer.control.Texts;
import org.relegend.viewer.mode.bench.JobDialogs;
import org.relegend.viewer.mode.bench.UnitPhotos;
import org.relegend.viewer.mode.lineup.LineUpRunner;
import org.relegend.viewer.mode.lineup.LineUpTool;
import org.relegend.viewer.mode.lineup.LineUpView;
import org.relegend.viewer.session.Session;

/**
 * Brings a photo of this very unit into the job's folder. One of a whole side is then lined up with
 * the map's by itself, away from the event thread; where that can't be, the two are laid side by
 * side for pairs to be clicked.
 */
final class UnitPhotoIntake {
  private final MapWindow window;
  private final Program program;
  private final Sitting sitting;
  private final Session session;

  UnitPhotoIntake(MapWindow window, Program program, Sitting sitting) {
    this.window = window;
    this.program = program;
    this.sitting = sitting;
    this.session = sitting.session();
  }

  /**
   * Adds it.
   *
   * @param closeUp the parts it shows, as typed; empty for a whole side
   * @param next runs when the photo is there, or can't be
   * @throws IllegalArgumentException with one sentence where what was told of it doesn't fit
   */
  void add(
      Path file, Intake.Shown shown, String closeUp, Runnable next, Consumer<Throwable> failed) {
    BoardMap map = session.document().laid();
    if (!map.boards().has(shown.board())) {
      throw new IllegalArgumentException(Texts.of("addphoto.noboard", shown.board()));
    }
    if (!session.room(UnitPhotos.class).mayChange()) {
      throw new IllegalArgumentException(Texts.of("notice.job_read_only"));
    }
    List<PartId> shows = JobDialogs.parts(session, closeUp);
    Path folder = sitting.job().orElseThrow().folder().path();
    Intake intake = new Intake(folder, map);
    sitting
        .panel()
        .status()
        .watch(
            program
                .jobs()
                .run(
                    Texts.of("file.adding", String.valueOf(file.getFileName())),
                    watch -> intake.photo(file, shown, watch::at),
                    edit -> added(photo(edit), shows, next),
                    failed));
  }

  private static Photo photo(EditGroup edit) {
    return (Photo) MapTables.PICTURES.putBy(edit.steps()).get(0);
  }

  private void added(Photo photo, List<PartId> shows, Runnable next) {
    if (isStillOpen() && session.room(UnitPhotos.class).add(photo, shows)) {
      PictureId own = session.room(UnitPhotos.class).idOver(photo.id());
      session.desk().show(own);
      if (shows.isEmpty()) {
        lineUp(own);
      }
    }
    next.run();
  }

  /** With the map's photo of the same side. */
  private void lineUp(PictureId own) {
    Optional<Photo> onto = session.desk().sameSide();
    Optional<Photo> shown = session.desk().photo().filter(photo -> photo.id().equals(own));
    if (onto.isEmpty() || shown.isEmpty()) {
      return;
    }
    Shelf shelf = sitting.panel().shelf();
    Path a = shelf.fileOf(shown.get());
    Path b = shelf.fileOf(onto.get());
    sitting
        .panel()
        .status()
        .watch(
            program
                .jobs()
                .run(
                    Texts.of("pairs.working"),
                    watch -> LineUpRunner.result(a, b, watch),
                    result -> take(own, onto.get().id(), result),
                    problem -> byHand(own, String.valueOf(problem.getMessage()))));
  }

  private boolean isStillOpen() {
    return window.sitting().filter(open -> open.session() == session).isPresent();
  }

  private void take(PictureId own, PictureId onto, PhotoResult result) {
    if (!isStillOpen() || !session.document().isOwn(own)) {
      return;
    }
    if (result instanceof PhotoResult.Aligned aligned) {
      List<Spot> spots =
          aligned.kept().stream().map(pair -> new Spot(pair.from(), pair.to())).toList();
      session.room(LineUpTool.class).take(own, onto, spots);
    } else {
      byHand(own, ((PhotoResult.Unaligned) result).message());
    }
  }

  /** Side by side with the map's, for pairs to be clicked; unless something else is in hand. */
  private void byHand(PictureId own, String reason) {
    if (!isStillOpen()) {
      return;
    }
    if (session.isAtRest() && session.document().isOwn(own)) {
      session.desk().show(own);
      sitting.panel().view(LineUpView.class).byHand();
    }
    session.room(LineUpTool.class).refuse(reason);
  }
}
