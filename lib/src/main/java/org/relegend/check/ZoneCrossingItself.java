package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.hazard.ZoneOutline;

/** Hazard zones whose outline crosses or touches itself: nobody can tell what is inside. */
final class ZoneCrossingItself implements Check {
  @Override
  public String code() {
    return "zone-crossing-itself";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.map().zones().stream()
        .filter(zone -> ZoneOutline.crossesItself(zone.outline()))
        .map(
            zone ->
                new Finding(
                        code(),
                        Severity.WARNING,
                        List.of(),
                        "The outline of hazard zone %s (%s) on %s crosses itself or encloses nothing"
                            .formatted(
                                zone.id(), zone.kind().word(), context.caption(zone.picture())),
                        "Draw the zone again, around all that can hurt.")
                    .on(zone.picture()))
        .toList();
  }
}
