package org.relegend.viewer.ui;

import java.util.List;
import org.relegend.viewer.control.RowList;
import org.relegend.viewer.mode.twins.PredictedPlaces;
import org.relegend.viewer.mode.twins.TwinTool;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.Session;

/** Twins in one window: works out what follows, and shows it in lists below the pictures. */
final class TwinWork {
  private final Session session;
  private final TwinWorking working;
  private final WorkPanel panel;
  private final TwinLists lists;

  TwinWork(Session session, TwinWorking working, WorkPanel panel) {
    this.session = session;
    this.working = working;
    this.panel = panel;
    lists = new TwinLists(session, working, panel::goToStrip, this::leaveGhosts);
  }

  List<RowList> lists() {
    return lists.all();
  }

  /** The map was opened. */
  void begin() {
    working.follow(false);
  }

  /** Takes up what changed. */
  void follow(Change change) {
    switch (change) {
      case MAP -> {
        working.follow(false);
        settleTwins();
        predict();
      }
      case TWINS -> {
        settleTwins();
        predict();
      }
      case TWINS_SAID -> {
        working.follow(true);
        lists.settleTwins();
        panel.show(lists.twins());
      }
      case PICTURES -> predict();
      case GHOSTS -> lists.settleGhosts();
      default -> {}
    }
  }

  private void settleTwins() {
    if (lists.twins().isVisible()) {
      lists.settleTwins();
    }
  }

  private void predict() {
    if (session.room(PredictedPlaces.class).areShown()) {
      lists.settleGhosts();
      working.predict(false);
    }
  }

  /** What follows from the twins that are known, in the place of the node strip; or the strip. */
  void toggleTwins() {
    if (lists.twins().isVisible()) {
      panel.goToStrip();
    } else {
      session.room(TwinTool.class).wanted();
      working.follow(true);
      lists.settleTwins();
      panel.show(lists.twins());
    }
  }

  /** Predicted places on the photo and in a list; or neither. */
  void toggleGhosts() {
    if (session.room(PredictedPlaces.class).areShown() && lists.ghosts().isVisible()) {
      leaveGhosts();
    } else {
      session.room(PredictedPlaces.class).show(true);
      working.predict(true);
      panel.show(lists.ghosts());
    }
  }

  private void leaveGhosts() {
    session.room(PredictedPlaces.class).show(false);
    panel.goToStrip();
  }

  /** Accepts all that the list shows which is open. */
  void acceptAll() {
    if (lists.twins().isVisible()) {
      session.room(TwinTool.class).acceptAll();
    } else {
      session.room(PredictedPlaces.class).acceptAll();
    }
  }

  /** Rejects all that the list shows which is open. */
  void rejectAll() {
    if (lists.twins().isVisible()) {
      session.room(TwinTool.class).rejectAll();
    } else {
      session.room(PredictedPlaces.class).rejectAll();
    }
  }
}
