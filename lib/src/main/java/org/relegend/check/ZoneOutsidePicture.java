package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.HazardZone;
import org.relegend.map.Picture;

/** Hazard zones that reach beyond their picture; a zone wholly outside is never seen. */
final class ZoneOutsidePicture implements Check {
  @Override
  public String code() {
    return "zone-outside-picture";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    List<Finding> findings = new ArrayList<>();
    for (HazardZone zone : context.map().zones()) {
      context.map().picture(zone.picture()).ifPresent(picture -> inspect(zone, picture, findings));
    }
    return findings;
  }

  private void inspect(HazardZone zone, Picture picture, List<Finding> findings) {
    long outside = zone.outline().stream().filter(corner -> !picture.contains(corner)).count();
    if (outside > 0) {
      findings.add(
          new Finding(
                  code(),
                  Severity.WARNING,
                  List.of(),
                  "Hazard zone %s (%s) has %d of its %d corners outside of %s"
                      .formatted(
                          zone.id(),
                          zone.kind().word(),
                          outside,
                          zone.outline().size(),
                          picture.caption()),
                  "Draw the zone again, around all that can hurt.")
              .about(zone.id().text())
              .on(picture.id()));
    }
  }
}
