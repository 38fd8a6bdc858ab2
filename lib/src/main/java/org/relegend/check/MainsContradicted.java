package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Subject;

/** Pins that bring mains to a net that is declared to be something else. */
final class MainsContradicted implements Check {
  @Override
  public String code() {
    return "mains-contradicted";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.hazards().mains().contradictions().stream()
        .map(
            found ->
                new Finding(
                    code(),
                    Severity.ERROR,
                    List.of(Subject.of(found.pin()), Subject.of(found.net())),
                    "%s on %s %s"
                        .formatted(
                            context.map().nameOf(Subject.of(found.pin())),
                            context.map().nameOf(Subject.of(found.net())),
                            found.message()),
                    "Treat the net as mains until both agree: correct the net or the part."))
        .toList();
  }
}
