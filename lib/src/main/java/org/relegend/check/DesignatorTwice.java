package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Designator;
import org.relegend.map.Part;
import org.relegend.map.Subject;

/** Several parts of one board under one designator. Two boards may well have an R1 each. */
final class DesignatorTwice implements Check {
  @Override
  public String code() {
    return "designator-twice";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    List<Finding> findings = new ArrayList<>();
    Map<Designator, List<Part>> byName =
        context.map().parts().stream()
            .collect(Collectors.groupingBy(Part::designator, TreeMap::new, Collectors.toList()));
    for (List<Part> named : byName.values()) {
      named.stream()
          .collect(Collectors.groupingBy(Part::board, TreeMap::new, Collectors.toList()))
          .values()
          .stream()
          .filter(parts -> parts.size() > 1)
          .forEach(parts -> findings.add(finding(parts)));
    }
    return findings;
  }

  private Finding finding(List<Part> parts) {
    Part first = parts.get(0);
    return new Finding(
        code(),
        Severity.ERROR,
        parts.stream().map(part -> Subject.of(part.id())).toList(),
        "Board %s has %d parts called %s"
            .formatted(first.board(), parts.size(), first.designator()),
        "Give each its own designator, or remove the one that isn't there.");
  }
}
