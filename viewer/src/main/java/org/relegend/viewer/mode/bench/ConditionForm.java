package org.relegend.viewer.mode.bench;

import javax.swing.JButton;
import javax.swing.JTextField;
import org.relegend.bench.PartState;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.QuestionBar;
import org.relegend.viewer.control.QuestionForm;
import org.relegend.viewer.control.TypedField;
import org.relegend.viewer.session.Question;
import org.relegend.viewer.session.Session;

/** Asks for the condition of a part: a key for each state; date code and value are filled in. */
public record ConditionForm(Session session) implements QuestionForm {
  @Override
  public boolean ask(Question question, QuestionBar bar) {
    if (question instanceof ConditionEditor.WhichCondition asked) {
      ask(asked, bar);
      return true;
    }
    return false;
  }

  private void ask(ConditionEditor.WhichCondition asked, QuestionBar bar) {
    bar.say(Messages.of("question.condition", session.map().nameOf(asked.part())));
    JTextField dateCode = new TypedField(6);
    JTextField fitted = new TypedField(8);
    JTextField note = new TypedField(14);
    JButton begun = null;
    int key = 0;
    for (PartState state : PartState.values()) {
      if (state != PartState.UNKNOWN) {
        key++;
        JButton button =
            bar.offer(
                "state." + Messages.word(state),
                Integer.toString(key),
                () ->
                    session
                        .room(ConditionEditor.class)
                        .answer(
                            asked,
                            state,
                            fitted.getText().strip(),
                            dateCode.getText().strip(),
                            note.getText().strip()));
        begun = begun == null ? button : begun;
      }
    }
    bar.labelled("question.condition.date", dateCode);
    bar.labelled("question.condition.fitted", fitted);
    bar.labelled("question.condition.note", note);
    if (begun != null) {
      bar.begin(begun);
    }
  }
}
