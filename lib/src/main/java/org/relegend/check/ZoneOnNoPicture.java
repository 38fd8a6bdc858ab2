package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.HazardZone;

/** Hazard zones on pictures that the map doesn't have: nobody is warned by them. */
final class ZoneOnNoPicture implements Check {
  @Override
  public String code() {
    return "zone-on-no-picture";
  }

  /** Without a fix on purpose: a warning must not go with one click. */
  @Override
  public List<Finding> inspect(CheckContext context) {
    return context.map().zones().stream()
        .filter(zone -> !context.map().pictures().has(zone.picture()))
        .map(this::finding)
        .toList();
  }

  private Finding finding(HazardZone zone) {
    return new Finding(
            code(),
            Severity.ERROR,
            List.of(),
            "Hazard zone %s (%s) lies on picture %s, which the map doesn't have, so nobody sees it"
                .formatted(zone.id(), zone.kind().word(), zone.picture()),
            "Add the picture again, or draw the zone on another picture of that place.")
        .about(zone.id().text())
        .on(zone.picture());
  }
}
