package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Part;
import org.relegend.map.Subject;
import org.relegend.marking.MarkingReadings;

/**
 * Values that set out to be a number and can't be read as one: worth knowing, since nothing is
 * computed from them, and no fault of the map.
 */
final class ValueUnreadable implements Check {
  @Override
  public String code() {
    return "value-unreadable";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.map().parts().stream()
        .filter(part -> KindValues.outcome(context, part) == MarkingReadings.Outcome.MALFORMED)
        .map(part -> finding(context, part))
        .toList();
  }

  private Finding finding(CheckContext context, Part part) {
    return new Finding(
        code(),
        Severity.INFORMATION,
        List.of(Subject.of(part.id())),
        "%s: %s".formatted(part.designator(), KindValues.reason(context, part)),
        "Leave it as it stands on the part, or write the value: 4k7, 100n, 10u 25V.");
  }
}
