package org.relegend.viewer.mode.bench;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.relegend.bench.Condition;
import org.relegend.bench.JobPhoto;
import org.relegend.bench.JobTable;
import org.relegend.bench.PartState;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.Subject;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Question;
import org.relegend.viewer.session.QuestionQueue;
import org.relegend.viewer.session.Room;
import org.relegend.viewer.session.Selection;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SubjectQueries;

/** Notes the condition of parts, one key each. */
public final class ConditionEditor implements Room {
  /** What is the condition of this part of the unit? */
  public record WhichCondition(PartId part) implements Question {}

  private final OpenJob work;
  private final Selection selection;
  private final QuestionQueue questions;
  private final ChangeNotifier hub;

  public ConditionEditor(Session session) {
    this.work = session.room(OpenJob.class);
    this.selection = session.selection();
    this.questions = session.questions();
    this.hub = session.hub();
  }

  /** Asks for the condition of the part that the eye is on. */
  public void ask() {
    hub.check();
    Optional<PartId> part = selection.focus().flatMap(SubjectQueries::partOf);
    if (!work.isOpen()) {
      hub.say(Notice.Kind.NO_JOB);
    } else if (part.isEmpty()) {
      hub.say(Notice.Kind.NOTHING_CHOSEN);
    } else {
      questions.ask(new WhichCondition(part.get()));
    }
  }

  /** The condition of the part asked about. */
  public void answer(
      WhichCondition question, PartState state, String fitted, String dateCode, String note) {
    questions.answered();
    note(question.part(), state, fitted, dateCode, note);
  }

  /** Adds a state to those of a part; states that can't hold with it go. */
  public void note(PartId part, PartState state, String fitted, String dateCode, String note) {
    Optional<Condition> before = work.job().flatMap(job -> job.condition(part));
    Set<PartState> states = EnumSet.of(state);
    boolean bare =
        state == PartState.ORIGINAL || state == PartState.UNKNOWN || state == PartState.MISSING;
    if (!bare) {
      before.ifPresent(known -> states.addAll(known.states()));
      states.remove(PartState.UNKNOWN);
      states.remove(PartState.MISSING);
      if (state == PartState.REPLACED) {
        states.remove(PartState.ORIGINAL);
      }
    }
    try {
      Condition condition =
          new Condition(
              part,
              states,
              fitted.isEmpty() ? before.map(Condition::fitted).orElse("") : fitted,
              dateCode.isEmpty() ? before.map(Condition::dateCode).orElse("") : dateCode,
              note.isEmpty() ? before.map(Condition::note).orElse("") : note,
              photos(part, before),
              work.author(),
              work.now());
      if (work.apply(JobTable.CONDITIONS.put(condition))) {
        hub.say(Notice.Kind.CONDITION, work.circuit().map().nameOf(part), condition.text());
      }
    } catch (IllegalArgumentException unfit) {
      hub.say(Notice.Kind.REFUSED, String.valueOf(unfit.getMessage()));
    }
  }

  /** The close-ups of the part that there are, besides those it was seen on before. */
  private List<PictureId> photos(PartId part, Optional<Condition> before) {
    return Stream.concat(
            before.stream().flatMap(known -> known.photos().stream()),
            work.job().stream()
                .flatMap(job -> job.photos().stream())
                .filter(own -> own.shows().contains(part))
                .map(JobPhoto::key))
        .distinct()
        .toList();
  }

  /** Parts that somebody worked on, or that aren't whole, in the order of the map. */
  public List<Condition> notOriginal() {
    return work.job().stream()
        .flatMap(job -> job.conditions().stream())
        .filter(Condition::notOriginal)
        .toList();
  }

  /** Whether anything is known of the subject's part. */
  public Optional<Condition> of(Subject subject) {
    return SubjectQueries.partOf(subject)
        .flatMap(part -> work.job().flatMap(job -> job.condition(part)));
  }
}
