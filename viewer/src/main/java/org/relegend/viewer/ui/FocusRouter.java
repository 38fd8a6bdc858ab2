package org.relegend.viewer.ui;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import org.relegend.viewer.control.Actions;
import org.relegend.viewer.control.KeyText;
import org.relegend.viewer.control.QuestionBar;
import org.relegend.viewer.control.UserAction;
import org.relegend.viewer.mode.bench.JobBar;
import org.relegend.viewer.mode.bench.OpenJob;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.TypedText;

/** Where what is typed next goes: to a question, to the find field, to the reading, to commands. */
final class FocusRouter {
  private final Session session;
  private final FindField field;
  private final FindController find;
  private final QuestionBar question;
  private final NodeStrip strip;
  private final JobBar jobBar;

  FocusRouter(
      Session session,
      FindField field,
      FindController find,
      QuestionBar question,
      NodeStrip strip,
      JobBar jobBar) {
    this.session = session;
    this.field = field;
    this.find = find;
    this.question = question;
    this.strip = strip;
    this.jobBar = jobBar;
    jobBar.onTaken(this::nextNode);
  }

  /** While a command of one key is typed as text, Alt and that key run it. */
  void commandsIn(Actions acts) {
    for (UserAction act : UserAction.values()) {
      act.key()
          .map(KeyText::textWithAlt)
          .filter(key -> !key.isEmpty())
          .ifPresent(key -> field.onKey(key, () -> acts.run(act)));
    }
  }

  /** After every click and drag on that picture the keyboard is where the next name is typed. */
  void after(PicturePane pane) {
    pane.canvas()
        .addMouseListener(
            new MouseAdapter() {
              @Override
              public void mouseReleased(MouseEvent event) {
                route();
              }
            });
    pane.filmstrip()
        .onChosen(
            () -> {
              pane.canvas().requestFocusInWindow();
              route();
            });
  }

  /** What is asked has the keyboard; else, while names are placed, their box. */
  void route() {
    if (session.question().isPresent()) {
      question.takeFocus();
    } else if (session.mode().typedText().filter(TypedText::holdsKeyboard).isPresent()) {
      field.requestFocusInWindow();
    }
  }

  /**
   * A tool was taken in hand: what was typed for another is gone; where it wants text, it's there.
   */
  void taken(PicturePane active) {
    find.takeUp();
    if (session.mode().typedText().isPresent()) {
      field.requestFocusInWindow();
      field.selectAll();
    } else if (field.isFocusOwner()) {
      active.canvas().requestFocusInWindow();
    }
  }

  /** The keyboard leaves the find field; with a job, to where a reading can be typed at once. */
  void leave() {
    if (session.question().isPresent()) {
      question.takeFocus();
    } else if (session.room(OpenJob.class).isOpen()) {
      jobBar.takeFocus();
    } else {
      strip.requestFocusInWindow();
    }
  }

  /** A reading was taken: the next node's name can be typed at once. */
  private void nextNode() {
    find.expectNode();
    field.requestFocusInWindow();
  }

  /** Walked on, without a name, after a reading: the next reading is typed. */
  void walked() {
    if (find.expectsNode() && field.isFocusOwner() && field.getText().isEmpty()) {
      leave();
    }
  }
}
