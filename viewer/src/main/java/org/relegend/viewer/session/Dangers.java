package org.relegend.viewer.session;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.relegend.hazard.Zones;
import org.relegend.map.HazardZone;
import org.relegend.map.MapIndex;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Placement;
import org.relegend.map.Subject;

/**
 * Which hazard zones someone would reach into at the place of something. A part is in a zone as
 * soon as its body, one of its sections or one of its pins is, on any picture: the board is one
 * thing, whichever picture shows it. That no zone is found never means that there is no danger.
 */
public final class Dangers {
  private final MapIndex index;

  public Dangers(MapIndex index) {
    this.index = index;
  }

  /** The zones around a subject: for a net, around any of the parts it joins. */
  public List<HazardZone> around(Subject subject) {
    Set<HazardZone> zones = new LinkedHashSet<>();
    if (index.map().zones().isEmpty()) {
      return List.of();
    }
    if (subject instanceof Subject.OfNet net) {
      collect(subject, zones);
      index
          .map()
          .net(net.net())
          .ifPresent(found -> found.pins().forEach(pin -> collectPart(pin.part(), zones)));
    } else {
      collectPart(partOf(subject), zones);
    }
    return List.copyOf(zones);
  }

  private static PartId partOf(Subject subject) {
    if (subject instanceof Subject.OfPart part) {
      return part.part();
    }
    return subject instanceof Subject.OfSection section
        ? section.part()
        : ((Subject.OfPin) subject).pin().part();
  }

  private void collectPart(PartId id, Set<HazardZone> zones) {
    collect(Subject.of(id), zones);
    index.map().part(id).ifPresent(part -> collectInside(part, zones));
  }

  private void collectInside(Part part, Set<HazardZone> zones) {
    part.pins().forEach(pin -> collect(Subject.of(part.ref(pin)), zones));
    part.sections()
        .forEach(section -> collect(new Subject.OfSection(part.id(), section.name()), zones));
  }

  private void collect(Subject subject, Set<HazardZone> zones) {
    for (Placement placement : index.placementsOf(subject)) {
      zones.addAll(Zones.over(index.map(), placement));
    }
  }
}
