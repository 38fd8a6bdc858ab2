package org.relegend.viewer.session;

import java.util.List;
import java.util.Optional;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.Placement;
import org.relegend.map.Subject;

/**
 * One card of the node strip.
 *
 * @param subject a pin that is joined there; a part; or a whole net where its pins are too many
 * @param page where it is seen on a page
 * @param photo where it is seen on a photo
 * @param unit where it is seen on a photo of this very unit, if {@code photo} isn't one
 * @param twin the same in the other channel
 * @param twinPhoto where that is seen on a photo
 * @param joined how it is known that it is joined
 * @param zones the hazard zones around it
 */
public record Card(
    Subject subject,
    Optional<Placement> page,
    Optional<Placement> photo,
    Optional<Placement> unit,
    Optional<Subject> twin,
    Optional<Placement> twinPhoto,
    Optional<Evidence> joined,
    List<HazardZone> zones) {
  public Card {
    zones = List.copyOf(zones);
  }
}
