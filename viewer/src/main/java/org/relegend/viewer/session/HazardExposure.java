package org.relegend.viewer.session;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.relegend.hazard.HazardZones;
import org.relegend.map.HazardZone;
import org.relegend.map.Subject;

/** Which hazard zones come into view when something is chosen. */
public record HazardExposure(MapDocument document, ShownPictures desk) {
  /** Those around the thing itself, and around what each card beside it shows, twins included. */
  public Set<HazardZone> of(Subject subject) {
    SubjectHazards dangers = new SubjectHazards(document);
    Set<HazardZone> zones = new LinkedHashSet<>(dangers.around(subject));
    for (NodeCard card : new CardStripBuilder(document, desk).of(subject).cards()) {
      zones.addAll(card.subject() instanceof Subject.OfNet ? shownOn(card) : card.zones());
      card.twin().ifPresent(twin -> zones.addAll(dangers.around(twin)));
    }
    return zones;
  }

  /** Those around the thing itself, where it alone is shown. */
  public Set<HazardZone> ofPlace(Subject subject) {
    return new LinkedHashSet<>(new SubjectHazards(document).around(subject));
  }

  /**
   * A whole net stands on one card, which shows one place of it: what else it joins comes later.
   */
  private Set<HazardZone> shownOn(NodeCard card) {
    Set<HazardZone> zones = new LinkedHashSet<>();
    Stream.of(card.page(), card.photo(), card.unit(), card.twinPhoto())
        .flatMap(Optional::stream)
        .forEach(
            place ->
                document.watched().stream()
                    .filter(zone -> HazardZones.isOver(zone, place))
                    .forEach(zones::add));
    return zones;
  }
}
