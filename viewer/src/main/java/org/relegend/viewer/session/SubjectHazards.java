package org.relegend.viewer.session;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.relegend.hazard.HazardZones;
import org.relegend.map.HazardZone;
import org.relegend.map.MapIndex;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Placement;
import org.relegend.map.Subject;

/**
 * Which hazard zones someone would reach into at the place of something. A part is in a zone as
 * soon as its body, one of its sections or one of its pins is, on any picture: the board is one
 * thing, whichever picture shows it. Around what follows from the circuit there are zones too,
 * though nobody drew them. That no zone is found never means that there is no danger.
 */
public final class SubjectHazards {
  private final MapIndex index;
  private final List<HazardZone> zones;

  public SubjectHazards(MapDocument document) {
    this.index = document.index();
    this.zones = document.watched();
  }

  /** The zones around a subject: for a net, around any of the parts it joins. */
  public List<HazardZone> around(Subject subject) {
    Set<HazardZone> found = new LinkedHashSet<>();
    if (zones.isEmpty()) {
      return List.of();
    }
    if (subject instanceof Subject.OfNet net) {
      collect(subject, found);
      index
          .map()
          .net(net.net())
          .ifPresent(joined -> joined.pins().forEach(pin -> collectPart(pin.part(), found)));
    } else {
      collectPart(partOf(subject), found);
    }
    return List.copyOf(found);
  }

  private static PartId partOf(Subject subject) {
    if (subject instanceof Subject.OfPart part) {
      return part.part();
    }
    return subject instanceof Subject.OfSection section
        ? section.part()
        : ((Subject.OfPin) subject).pin().part();
  }

  private void collectPart(PartId id, Set<HazardZone> found) {
    collect(Subject.of(id), found);
    index.map().part(id).ifPresent(part -> collectInside(part, found));
  }

  private void collectInside(Part part, Set<HazardZone> found) {
    part.pins().forEach(pin -> collect(Subject.of(part.ref(pin)), found));
    part.sections()
        .forEach(section -> collect(new Subject.OfSection(part.id(), section.name()), found));
  }

  private void collect(Subject subject, Set<HazardZone> found) {
    for (Placement placement : index.placementsOf(subject)) {
      zones.stream().filter(zone -> HazardZones.isOver(zone, placement)).forEach(found::add);
    }
  }
}
