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
import org.relegend.scan.PictureIntake;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.OpenedPictures;
import org.relegend.viewer.mode.bench.JobDialogs;
import org.relegend.viewer.mode.bench.UnitPhotoEditor;
import org.relegend.viewer.mode.lineup.LineUpRunner;
import org.relegend.viewer.mode.lineup.LineUpTool;
import org.relegend.viewer.mode.lineup.LineUpView;
import org.relegend.viewer.session.Session;

/**
 * Brings a photo of this very unit into the job's folder. One of a whole side is then lined up with
 * the map's by itself, away from the event thread; where that can't be, the two are laid side by
 * side for pairs to be clicked.
 */
final class UnitPhotoAdder {
  private final MapWindow window;
  private final Program program;
  private final OpenMap sitting;
  private final Session session;

  UnitPhotoAdder(MapWindow window, Program program, OpenMap sitting) {
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
      Path file,
      PictureIntake.Shown shown,
      String closeUp,
      Runnable next,
      Consumer<Throwable> failed) {
    BoardMap map = session.document().laid();
    if (!map.boards().has(shown.board())) {
      throw new IllegalArgumentException(Messages.of("addphoto.noboard", shown.board()));
    }
    if (!session.room(UnitPhotoEditor.class).mayChange()) {
      throw new IllegalArgumentException(Messages.of("notice.job_read_only"));
    }
    List<PartId> shows = JobDialogs.parts(session, closeUp);
    Path folder = sitting.job().orElseThrow().folder().path();
    PictureIntake intake = new PictureIntake(folder, map);
    sitting
        .panel()
        .status()
        .watch(
            program
                .jobs()
                .run(
                    Messages.of("file.adding", String.valueOf(file.getFileName())),
                    watch -> intake.photo(file, shown, watch::at),
                    edit -> added(photo(edit), shows, next),
                    failed));
  }

  private static Photo photo(EditGroup edit) {
    return (Photo) MapTables.PICTURES.putBy(edit.steps()).get(0);
  }

  private void added(Photo photo, List<PartId> shows, Runnable next) {
    if (isStillOpen() && session.room(UnitPhotoEditor.class).add(photo, shows)) {
      PictureId own = session.room(UnitPhotoEditor.class).idOver(photo.id());
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
    OpenedPictures shelf = sitting.panel().shelf();
    Path a = shelf.fileOf(shown.get());
    Path b = shelf.fileOf(onto.get());
    sitting
        .panel()
        .status()
        .watch(
            program
                .jobs()
                .run(
                    Messages.of("pairs.working"),
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
