package org.relegend.viewer.mode.edit;

import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.QuestionBar;
import org.relegend.viewer.control.QuestionForm;
import org.relegend.viewer.session.Question;
import org.relegend.viewer.session.Session;

/** Asks before a part or net goes, and says what goes with it. */
public record RemoveForm(Session session) implements QuestionForm {
  @Override
  public boolean ask(Question question, QuestionBar bar) {
    if (question instanceof EntryEditor.RemoveEntry remove) {
      String name = session.map().nameOf(remove.subject());
      bar.say(
          Messages.of(
              "question.removeentry", name, remove.places(), remove.joins(), remove.readings()));
      bar.offer("question.removezone.no", "K", session::back).requestFocusInWindow();
      bar.offer(
          "question.removezone.yes", "R", () -> session.room(EntryEditor.class).answer(remove));
      return true;
    }
    return false;
  }
}
