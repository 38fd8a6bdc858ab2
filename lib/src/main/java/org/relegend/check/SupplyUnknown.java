package org.relegend.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.relegend.circuit.Node;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.hazard.Hazards;
import org.relegend.hazard.NodeHazard;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

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
        "Take it as high%s. Measure what feeds it with a probe rated above it, and give its net the voltage."
            .formatted(least(context, subjects)));
  }

  /**
   * The largest rating of a capacitor there: the voltage may be so high, and nothing says no more.
   */
  private static String least(CheckContext context, List<Subject> subjects) {
    return context.hazards().charges().stream()
        .filter(charge -> charge.ends().stream().map(Node::subject).anyMatch(subjects::contains))
        .flatMapToDouble(charge -> charge.rated().stream())
        .max()
        .stream()
        .mapToObj(rated -> new Amount(Quantity.VOLTAGE, rated).text(3))
        .map(", at least the %s that a capacitor there is made for"::formatted)
        .findFirst()
        .orElse("; how high is not known");
  }
}
