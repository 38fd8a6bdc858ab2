package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.NetId;
import org.relegend.map.Subject;

/** Nets declared to carry a voltage, of which nobody said how much. */
final class VoltageUnknown implements Check {
  @Override
  public String code() {
    return "voltage-unknown";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    List<NetId> nets = context.hazards().noVolts();
    List<Subject> subjects = nets.stream().map(Subject::of).toList();
    return nets.isEmpty()
        ? List.of()
        : List.of(
            new Finding(
                code(),
                Severity.INFORMATION,
                subjects,
                "No voltage is given for %s: whether %s high can't be told"
                    .formatted(
                        context.names(subjects), CountText.verb(nets.size(), "it is", "they are")),
                "Give the nominal voltage; until then take it as high."));
  }
}
