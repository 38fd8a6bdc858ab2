package org.relegend.viewer.ui;

import org.relegend.map.BoardMap;
import org.relegend.scan.StraightPhoto;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.Squaring;
import org.relegend.viewer.work.Jobs;

/** Draws a photo with the board square on, away from the event thread. */
final class Straightening {
  private final Session session;
  private final Shelf shelf;
  private final Jobs jobs;
  private final StatusLine status;

  Straightening(Session session, Shelf shelf, Jobs jobs, StatusLine status) {
    this.session = session;
    this.shelf = shelf;
    this.jobs = jobs;
    this.status = status;
  }

  /** Begins what is asked for, if anything is. */
  void follow() {
    session.squaring().wanted().ifPresent(this::draw);
  }

  private void draw(Squaring.Wanted wanted) {
    BoardMap map = session.map();
    String title = Texts.of("straighten.title", wanted.photo().caption());
    status.watch(
        jobs.run(
            Texts.of("straighten.working"),
            watch ->
                StraightPhoto.of(
                    shelf.folder(),
                    map,
                    wanted.photo(),
                    wanted.view(),
                    title,
                    wanted.says(),
                    watch::at),
            made -> {
              if (status.isDisplayable()) { // else the map is closed
                session.squaring().drawn(made.edit(), made.picture(), made.view());
              }
            },
            problem -> session.squaring().failed(String.valueOf(problem.getMessage()))));
  }
}
