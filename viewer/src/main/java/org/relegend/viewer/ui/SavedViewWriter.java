package org.relegend.viewer.ui;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.store.Digests;
import org.relegend.viewer.mode.bench.OpenJob;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.work.TaskRunner;

/** Notes where one is, soon after every step, so that a kill or two weeks lose nothing of it. */
final class SavedViewWriter {
  /** Steps that follow each other faster than this are noted together. */
  private static final int MILLIS = 300;

  private final Session session;
  private final MapPanel panel;
  private final TaskRunner jobs;
  private final Path ofMap;
  private final Timer timer = new Timer(MILLIS, fired -> note());
  private @Nullable Path job;
  private SavedView noted = SavedView.NOWHERE;

  /**
   * @param ofMap where it is noted while no job lies over the map
   * @param jobs with one thread, so that notes keep their order
   */
  SavedViewWriter(Session session, MapPanel panel, TaskRunner jobs, Path ofMap) {
    this.session = session;
    this.panel = panel;
    this.jobs = jobs;
    this.ofMap = ofMap;
    timer.setRepeats(false);
    session.listen(this::follow);
    for (PicturePane pane : List.of(panel.page(), panel.photo())) {
      pane.canvas().onView(view -> timer.restart());
    }
  }

  /** The file for a map that is opened without a job. */
  static Path fileOfMap(Path folder, Path map) {
    String whole = map.toAbsolutePath().normalize().toString();
    String name = Digests.sha256(whole.getBytes(StandardCharsets.UTF_8)).substring(0, 32);
    return folder.resolve("desks").resolve(name + ".txt");
  }

  /** The job whose folder holds the note from now on. */
  void over(Path job) {
    this.job = job;
    timer.restart();
  }

  private void follow(Change change) {
    if (change == Change.PICTURES || change == Change.CHOICE || change == Change.CURSOR) {
      timer.restart();
    }
  }

  /** Another list, or the strip, lies below. */
  void listChanged() {
    timer.restart();
  }

  /** The last note, at once. */
  void stop() {
    timer.stop();
    note();
  }

  private void note() {
    SavedView now = now();
    if (now.equals(noted)) {
      return;
    }
    noted = now;
    Path over = job;
    jobs.run(
        "desk",
        watch -> {
          if (over == null) {
            now.write(ofMap);
          } else {
            now.write(over.resolve(SavedView.FILE));
            now.withJob(over).write(ofMap);
          }
          return now;
        },
        written -> {},
        unwritten -> {}); // a convenience: where it can't be kept, nothing else is lost
  }

  private SavedView now() {
    return new SavedView(
        spot(session.desk().page(), panel.page()),
        spot(session.desk().photo(), panel.photo()),
        session.selection().subject(),
        session.selection().cursor(),
        panel.lower().listShown(),
        "");
  }

  private Optional<SavedView.Spot> spot(Optional<? extends Picture> shown, PicturePane pane) {
    return shown
        .map(Picture::id)
        .filter(pane::isShown)
        .flatMap(id -> pane.canvas().view().map(view -> SavedView.Spot.of(id, view)));
  }

  /** Goes back to where one was; past the cautions of what was chosen, or not at all. */
  void goBack(SavedView before) {
    Runnable views =
        () -> {
          before.page().ifPresent(spot -> look(spot, panel.page()));
          before.photo().ifPresent(spot -> look(spot, panel.photo()));
        };
    before
        .chosen()
        .filter(session.walk()::knows)
        .ifPresentOrElse(
            subject -> session.walk().chooseAgain(subject, before.card(), views), views);
    if (session.room(OpenJob.class).isOpen()) {
      panel.lower().showList(before.list());
    }
  }

  private void look(SavedView.Spot spot, PicturePane pane) {
    PictureId id = spot.picture();
    if (session.document().laid().pictures().has(id)) {
      session.desk().show(id);
      if (pane.isShown(id)) {
        pane.lookAs(spot);
      }
    }
  }
}
