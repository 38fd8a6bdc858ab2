package org.relegend.viewer.mode.twins;

import java.util.List;
import java.util.function.Consumer;
import org.relegend.viewer.control.RowListPanel;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.Session;

/** Twins in one window: works out what follows, and shows it in lists below the pictures. */
public final class TwinPanel {
  private final Session session;
  private final TwinRunner working;
  private final Consumer<RowListPanel> show;
  private final Runnable back;
  private final TwinListPanel lists;

  /**
   * @param show a list in the place of the node strip
   * @param back shows the strip again
   */
  public TwinPanel(
      Session session, TwinRunner working, Consumer<RowListPanel> show, Runnable back) {
    this.session = session;
    this.working = working;
    this.show = show;
    this.back = back;
    lists = new TwinListPanel(session, working, back, this::leaveGhosts);
  }

  public List<RowListPanel> lists() {
    return lists.all();
  }

  /** The map was opened. */
  public void begin() {
    working.follow(false);
  }

  /** Takes up what changed. */
  public void follow(Change change) {
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
        show.accept(lists.twins());
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
  public void toggleTwins() {
    if (lists.twins().isVisible()) {
      back.run();
    } else {
      session.room(TwinTool.class).wanted();
      working.follow(true);
      lists.settleTwins();
      show.accept(lists.twins());
    }
  }

  /** Predicted places on the photo and in a list; or neither. */
  public void toggleGhosts() {
    if (session.room(PredictedPlaces.class).areShown() && lists.ghosts().isVisible()) {
      leaveGhosts();
    } else {
      session.room(PredictedPlaces.class).show(true);
      working.predict(true);
      show.accept(lists.ghosts());
    }
  }

  private void leaveGhosts() {
    session.room(PredictedPlaces.class).show(false);
    back.run();
  }

  /** Accepts all that the list shows which is open. */
  public void acceptAll() {
    if (lists.twins().isVisible()) {
      session.room(TwinTool.class).acceptAll();
    } else {
      session.room(PredictedPlaces.class).acceptAll();
    }
  }

  /** Rejects all that the list shows which is open. */
  public void rejectAll() {
    if (lists.twins().isVisible()) {
      session.room(TwinTool.class).rejectAll();
    } else {
      session.room(PredictedPlaces.class).rejectAll();
    }
  }
}
