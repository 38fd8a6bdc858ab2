package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.MapTables;
import org.relegend.map.Placement;

/** Placements of parts, pins, sections or nets that the map doesn't have. */
final class PlacementOfNothing implements Check {
  @Override
  public String code() {
    return "placement-of-nothing";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.map().placements().stream()
        .filter(placement -> !context.knows(placement.subject()))
        .map(placement -> finding(context, placement))
        .toList();
  }

  private Finding finding(CheckContext context, Placement placement) {
    return new Finding(
            code(),
            Severity.WARNING,
            List.of(placement.subject()),
            "%s is placed on %s, but the map doesn't have it"
                .formatted(
                    context.map().nameOf(placement.subject()),
                    context.caption(placement.picture())),
            "Take the placement away, or add what it is of.")
        .on(placement.picture())
        .fixedBy(MapTables.PLACEMENTS.remove(placement.key()));
  }
}
