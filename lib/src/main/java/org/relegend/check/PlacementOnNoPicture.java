package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.MapTables;
import org.relegend.map.Placement;

/** Placements on pictures that the map doesn't have. */
final class PlacementOnNoPicture implements Check {
  @Override
  public String code() {
    return "placement-on-no-picture";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.map().placements().stream()
        .filter(placement -> !context.map().pictures().has(placement.picture()))
        .map(placement -> finding(context, placement))
        .toList();
  }

  private Finding finding(CheckContext context, Placement placement) {
    return new Finding(
            code(),
            Severity.WARNING,
            List.of(placement.subject()),
            "%s is placed on picture %s, which the map doesn't have"
                .formatted(context.map().nameOf(placement.subject()), placement.picture()),
            "Take the placement away, or add the picture under that name.")
        .on(placement.picture())
        .fixedBy(MapTables.PLACEMENTS.remove(placement.key()));
  }
}
