package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Subject;

/** Parts on the mains of which too little is told, so that all their pins are taken as joined. */
final class JoinedByAssumption implements Check {
  @Override
  public String code() {
    return "joined-by-assumption";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.hazards().mains().assumed().stream()
        .map(
            part ->
                new Finding(
                    code(),
                    Severity.WARNING,
                    List.of(Subject.of(part)),
                    "%s is on the mains, and too little is told of it: all its pins are taken as live"
                        .formatted(context.map().nameOf(part)),
                    "Give its kind, and the winding, side or pole of each pin as a role; numbers,"
                        + " colours and volts alone don't tell which pins hang together."))
        .toList();
  }
}
