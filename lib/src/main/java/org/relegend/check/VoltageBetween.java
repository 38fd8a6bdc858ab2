package org.relegend.check;

import java.util.List;
import java.util.Locale;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.hazard.Across;
import org.relegend.map.Subject;

/** Rails that are low against the reference, while the voltage from one to the other is high. */
final class VoltageBetween implements Check {
  @Override
  public String code() {
    return "voltage-between";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.hazards().across().stream().map(pair -> finding(context, pair)).toList();
  }

  private Finding finding(CheckContext context, Across pair) {
    List<Subject> ends = List.of(pair.positive().subject(), pair.negative().subject());
    return new Finding(
        code(),
        Severity.INFORMATION,
        ends,
        String.format(
            Locale.ROOT,
            "Between %s and %s there are %.3g V",
            context.map().nameOf(ends.get(0)),
            context.map().nameOf(ends.get(1)),
            pair.volts()),
        "Treat both as high voltage wherever a hand or a probe can reach both.");
  }
}
