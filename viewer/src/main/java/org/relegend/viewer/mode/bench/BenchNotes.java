package org.relegend.viewer.mode.bench;

import java.util.List;
import org.relegend.bench.EntryId;
import org.relegend.bench.Hypothesis;
import org.relegend.bench.JobTable;
import org.relegend.bench.LogEntry;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Room;
import org.relegend.viewer.session.Session;

/** What is thought and done at the bench: hypotheses with their tests, and the log. */
public final class BenchNotes implements Room {
  private final Session session;
  private final OpenJob bench;

  public BenchNotes(Session session) {
    this.session = session;
    bench = session.room(OpenJob.class);
  }

  /** Notes what somebody thinks is wrong. */
  public boolean suppose(List<PartId> parts, String what, String why, String test) {
    session.hub().check();
    try {
      return bench
          .job()
          .map(
              job ->
                  bench.apply(
                      JobTable.HYPOTHESES.put(
                          new Hypothesis(
                              job.nextHypothesis(),
                              parts,
                              what,
                              why,
                              test,
                              Hypothesis.Result.OPEN,
                              "",
                              session.hand().author(),
                              session.hand().now()))))
          .orElse(false);
    } catch (IllegalArgumentException unfit) {
      session.hub().say(Notice.Kind.REFUSED, String.valueOf(unfit.getMessage()));
      return false;
    }
  }

  /** Notes what a hypothesis' test gave. */
  public boolean refresh(EntryId hypothesis, Hypothesis.Result result, String outcome) {
    session.hub().check();
    return bench
        .job()
        .flatMap(job -> job.hypotheses().find(hypothesis))
        .map(found -> bench.apply(JobTable.HYPOTHESES.put(found.with(result, outcome))))
        .orElse(false);
  }

  /** Writes a line into the log. */
  public boolean log(LogEntry.Kind kind, List<Subject> about, String text) {
    session.hub().check();
    try {
      return bench
          .job()
          .map(
              job ->
                  bench.apply(
                      JobTable.LOG.put(
                          new LogEntry(
                              job.nextLog(),
                              kind,
                              about,
                              text,
                              session.hand().author(),
                              session.hand().now()))))
          .orElse(false);
    } catch (IllegalArgumentException unfit) {
      session.hub().say(Notice.Kind.REFUSED, String.valueOf(unfit.getMessage()));
      return false;
    }
  }
}
