package org.relegend.viewer.ui;

import java.nio.file.Path;
import java.util.Optional;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.viewer.mode.bench.OpenJob;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.view.ViewState;

/** The program that {@link ResumeIT} kills: a job in the middle of being worked on. */
final class KilledBench {
  private KilledBench() {}

  /**
   * @param args the job's folder, a folder for the cache
   */
  public static void main(String[] args) throws Exception {
    Path job = Path.of(args[0]);
    Technician tech =
        Technician.start(Optional.of(job), ViewerPreferences.inMemory(), Path.of(args[1]));
    Session session = tech.session();
    tech.key("ctrl F");
    tech.type("A_ATT");
    tech.awaitShown(FindResults.class, "results");
    tech.key("ENTER");
    tech.await(
        "A_ATT",
        () -> session.selection().subject().equals(Optional.of(Subject.parse("net:A_ATT"))));
    int before = session.room(OpenJob.class).job().orElseThrow().readings().size();
    tech.type("5.37");
    tech.key("ENTER");
    tech.await(
        "the reading",
        () -> session.room(OpenJob.class).job().orElseThrow().readings().size() == before + 1);
    tech.key("RIGHT"); // the second card
    tech.key("H");
    tech.dialog("hypothesis");
    tech.type("leaks");
    tech.key("TAB");
    tech.type("C102");
    tech.key("ENTER");
    tech.await(
        "the hypothesis",
        () -> !session.room(OpenJob.class).job().orElseThrow().hypotheses().isEmpty());
    tech.key("shift H");
    ViewState looked =
        Technician.onEdt(
            () -> {
              PictureCanvas canvas = tech.panel().photo().canvas();
              canvas.look(new Point(1234, 987), 1.75);
              return canvas.view().orElseThrow();
            });
    tech.type("4.4"); // half an entry, which is nowhere yet
    tech.await(
        "the note of it",
        () ->
            SavedView.read(job.resolve(SavedView.FILE))
                .photo()
                .filter(spot -> spot.scale() == looked.scale())
                .filter(spot -> spot.centre().equals(looked.centre()))
                .isPresent());
    System.out.printf(
        java.util.Locale.ROOT,
        "at %s %s %s%n",
        looked.centre().x(),
        looked.centre().y(),
        looked.scale());
    Thread.currentThread().join();
  }
}
