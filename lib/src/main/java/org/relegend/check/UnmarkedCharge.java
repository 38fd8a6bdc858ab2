package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.HazardZone;

/** Capacitors on photos that hold much charge and lie in no zone that says so. */
final class UnmarkedCharge implements Check {
  @Override
  public String code() {
    return "unmarked-charge";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return UnmarkedDanger.findings(
        context,
        code(),
        Severity.WARNING,
        context.hazards().unmarked().stream()
            .filter(danger -> danger.kind() == HazardZone.Kind.STORED_CHARGE)
            .toList());
  }
}
