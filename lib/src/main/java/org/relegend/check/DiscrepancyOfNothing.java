package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.MapTables;

/** Notes on what the drawing has for parts or pins that the map doesn't have. */
final class DiscrepancyOfNothing implements Check {
  @Override
  public String code() {
    return "discrepancy-of-nothing";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.map().discrepancies().stream()
        .filter(discrepancy -> !context.knows(discrepancy.subject()))
        .map(discrepancy -> finding(context, discrepancy))
        .toList();
  }

  private Finding finding(CheckContext context, DrawingDiscrepancy discrepancy) {
    return new Finding(
            code(),
            Severity.WARNING,
            List.of(discrepancy.subject()),
            "There is a note on the drawn %s of %s, but the map doesn't have it"
                .formatted(
                    discrepancy.aspect().word(), context.map().nameOf(discrepancy.subject())),
            "Drop the note, or add what it is of.")
        .fixedBy(MapTables.DISCREPANCIES.remove(discrepancy.key()));
  }
}
