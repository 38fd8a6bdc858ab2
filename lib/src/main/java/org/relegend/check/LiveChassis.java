package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import org.relegend.circuit.Node;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.hazard.MainsReach;
import org.relegend.map.NetId;
import org.relegend.map.Subject;

/** Reference nets that mains reaches: the chassis, and all test gear clipped to it, may be live. */
final class LiveChassis implements Check {
  @Override
  public String code() {
    return "live-chassis";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    MainsReach mains = context.hazards().mains();
    List<Finding> findings = new ArrayList<>();
    for (NetId net : mains.chassis()) {
      List<Subject> way = mains.wayTo(Node.of(net)).stream().map(Subject::of).toList();
      List<Subject> subjects = new ArrayList<>(List.of(Subject.of(net)));
      subjects.addAll(way);
      findings.add(
          new Finding(
              code(),
              Severity.ERROR,
              subjects,
              "Mains reaches %s, what voltages are measured against%s: the chassis may be live"
                  .formatted(
                      context.map().nameOf(Subject.of(net)),
                      way.isEmpty() ? "" : ", through " + context.names(way)),
              "Clip no earthed lead to it. If the map is wrong, mend the nets on the way."));
    }
    return findings;
  }
}
