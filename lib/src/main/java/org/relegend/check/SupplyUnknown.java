package org.relegend.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.hazard.Hazards;
import org.relegend.hazard.NodeHazard;
import org.relegend.map.Subject;

/** Nodes that hang on a supply of which nobody told the voltage. */
final class SupplyUnknown implements Check {
  @Override
  public String code() {
    return "supply-unknown";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    Hazards hazards = context.hazards();
    Map<String, List<Subject>> byReason = new LinkedHashMap<>();
    for (NodeHazard hazard : hazards.unknown()) {
      Subject subject = hazard.node().subject();
      boolean listed = hazards.noVolts().stream().map(Subject::of).anyMatch(subject::equals);
      if (!listed) {
        byReason.computeIfAbsent(hazard.reason(), reason -> new ArrayList<>()).add(subject);
      }
    }
    List<Finding> findings = new ArrayList<>();
    byReason.forEach((reason, subjects) -> findings.add(finding(context, reason, subjects)));
    return findings;
  }

  private Finding finding(CheckContext context, String reason, List<Subject> subjects) {
    return new Finding(
        code(),
        Severity.WARNING,
        subjects,
        "The voltage of %s is unknown: %s".formatted(context.names(subjects), reason),
        "Take it as high, up to a thousand volts. Measure what feeds it with a probe made for that,"
            + " and give its net the voltage.");
  }
}
