package org.relegend.viewer.session;

import java.util.LinkedHashSet;
import java.util.Set;
import org.relegend.map.HazardZone;
import org.relegend.map.MapIndex;
import org.relegend.map.Subject;

/** Which hazard zones come into view when something is chosen. */
record Exposure(MapIndex index, Desk desk) {
  /** Those around the thing itself, and around what each card beside it shows, twins included. */
  Set<HazardZone> of(Subject subject) {
    Dangers dangers = new Dangers(index);
    Set<HazardZone> zones = new LinkedHashSet<>(dangers.around(subject));
    for (Card card : new StripMaker(index, desk).of(subject).cards()) {
      zones.addAll(card.zones());
      card.twin().ifPresent(twin -> zones.addAll(dangers.around(twin)));
    }
    return zones;
  }
}
