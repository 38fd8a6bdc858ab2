package org.relegend.viewer.mode.twins;

import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.QuestionBar;
import org.relegend.viewer.control.QuestionForm;
import org.relegend.viewer.session.Question;
import org.relegend.viewer.session.Session;

/** Asks which is the twin. */
public record TwinForm(Session session) implements QuestionForm {
  @Override
  public boolean ask(Question question, QuestionBar bar) {
    if (question instanceof TwinTool.WhichTwin twin) {
      String asked = Messages.of("question.twin", session.map().nameOf(twin.subject()));
      bar.typed("whichtwin", asked, 8, name -> session.room(TwinTool.class).answer(twin, name));
      return true;
    }
    return false;
  }
}
