package org.relegend.viewer.session;

import java.util.LinkedHashSet;
import java.util.Set;
import org.relegend.map.HazardZone;
import org.relegend.map.MapIndex;
import org.relegend.map.Subject;

/** Which hazard zones come into view when something is chosen. */
record Exposure(MapIndex index, Desk desk) {
  /** Those around the thing itself, and around the place of each card that lies beside it. */
  Set<HazardZone> of(Subject subject) {
    Set<HazardZone> zones = new LinkedHashSet<>(new Dangers(index).around(subject));
    new StripMaker(index, desk).of(subject).cards().forEach(card -> zones.addAll(card.zones()));
    return zones;
  }
}
