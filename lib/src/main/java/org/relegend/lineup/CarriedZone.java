package org.relegend.lineup;

import java.util.List;
import org.relegend.map.HazardZone;
import org.relegend.map.PictureId;

/**
 * A hazard zone of another picture as it lies on this one, larger by the error of its carrying.
 *
 * @param source the zone that a person drew
 * @param zone what it comes to here: of the same kind, on the same evidence
 * @param via the pictures on the way, the source's first, this one last
 */
public record CarriedZone(HazardZone source, HazardZone zone, List<PictureId> via) {
  public CarriedZone {
    via = List.copyOf(via);
  }
}
