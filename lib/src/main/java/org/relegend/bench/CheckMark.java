package org.relegend.bench;

import java.time.Instant;
import org.relegend.map.Keyed;
import org.relegend.map.TextRules;

/** That a step of the checklist was done, by whom, when, and what came of it. */
public record CheckMark(CheckStep step, String note, String author, Instant at)
    implements Keyed<CheckStep> {
  public CheckMark {
    TextRules.note(note);
    TextRules.line("author", author);
    at = Timestamps.checked(at);
  }

  @Override
  public CheckStep key() {
    return step;
  }
}
