package org.relegend.viewer.session;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.relegend.map.HazardZone;
import org.relegend.map.Placement;

/**
 * Where the technician clicked, and what lies there.
 *
 * @param placement what is meant by the click, if anything is placed there
 * @param around hazard zones around the point itself
 * @param zones those, and the ones that come into view with what is meant
 */
public record Target(
    Click click, Optional<Placement> placement, Set<HazardZone> around, Set<HazardZone> zones) {
  static Target of(Click click, MapDocument document, HazardExposure exposure) {
    Optional<Placement> hit = PointerHits.at(document.seen(), click);
    Set<HazardZone> around =
        Set.copyOf(PointerHits.zonesAt(document.watched(), click.picture(), click.at()));
    Set<HazardZone> zones = new LinkedHashSet<>(around);
    hit.ifPresent(place -> zones.addAll(exposure.of(place.subject())));
    return new Target(click, hit, around, zones);
  }
}
