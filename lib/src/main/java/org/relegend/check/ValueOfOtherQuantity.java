package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Part;
import org.relegend.map.Subject;
import org.relegend.marking.MarkingReadings;

/** Values of another quantity than the part's kind has: a resistor of so many farads. */
final class ValueOfOtherQuantity implements Check {
  @Override
  public String code() {
    return "value-of-other-quantity";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.map().parts().stream()
        .filter(part -> KindValues.outcome(context, part) == MarkingReadings.Outcome.OTHER_QUANTITY)
        .map(part -> finding(context, part))
        .toList();
  }

  private Finding finding(CheckContext context, Part part) {
    return new Finding(
        code(),
        Severity.WARNING,
        List.of(Subject.of(part.id())),
        "%s is a %s: %s"
            .formatted(part.designator(), part.kind(), KindValues.reason(context, part)),
        "Correct the value, or the kind of the part.");
  }
}
