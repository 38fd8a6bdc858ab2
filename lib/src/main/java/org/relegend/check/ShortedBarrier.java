package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.hazard.MainsReach;
import org.relegend.map.Subject;

/** Parts that should keep the mains on one side and have it on both. */
final class ShortedBarrier implements Check {
  @Override
  public String code() {
    return "shorted-barrier";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    List<Finding> findings = new ArrayList<>();
    for (MainsReach.Barrier barrier : context.hazards().mains().barriers()) {
      barrier.failure().ifPresent(why -> findings.add(finding(context, barrier, why)));
    }
    return findings;
  }

  private Finding finding(
      CheckContext context, MainsReach.Barrier barrier, MainsReach.Barrier.Failure why) {
    List<Subject> subjects = new ArrayList<>(List.of(Subject.of(barrier.part())));
    barrier.way().stream()
        .map(Subject::of)
        .filter(s -> !subjects.contains(s))
        .forEach(subjects::add);
    boolean shorted = why == MainsReach.Barrier.Failure.SHORTED;
    String name = context.map().nameOf(barrier.part());
    String message =
        shorted
            ? "%s isolates nothing: pins of both its sides are on one net, and mains is on it"
                .formatted(name)
            : "%s has mains on both sides%s"
                .formatted(
                    name,
                    barrier.way().isEmpty()
                        ? ", as declared"
                        : "; it comes there through "
                            + context.names(barrier.way().stream().map(Subject::of).toList()));
    return new Finding(
        code(),
        shorted ? Severity.ERROR : Severity.WARNING,
        subjects,
        message,
        "Treat both sides as mains. If the map is wrong, mend the nets of its pins.");
  }
}
