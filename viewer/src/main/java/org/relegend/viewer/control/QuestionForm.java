package org.relegend.viewer.control;

import org.relegend.viewer.session.Question;

/** How questions of one room are put. */
public interface QuestionForm {
  /** Puts a question with its answers into the bar; false where it is one of another room. */
  boolean ask(Question question, QuestionBar bar);
}
