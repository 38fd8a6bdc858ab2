package org.relegend.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Kinds;
import org.relegend.hazard.Hazards;
import org.relegend.hazard.VoltageLimits;
import org.relegend.lineup.LineUps;
import org.relegend.map.BoardMap;
import org.relegend.map.MapIndex;
import org.relegend.map.Part;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/** All that checks may look at, for one map. Not for use by several threads at once. */
public final class CheckContext {
  /** How many names a message lists before it counts the rest. */
  static final int LISTED = 12;

  private final MapIndex index;
  private final Kinds kinds;
  private final PictureFiles files;
  private final Map<PictureId, Optional<String>> digests = new HashMap<>();
  private @Nullable Hazards hazards;
  private @Nullable LineUps lineUps;

  public CheckContext(MapIndex index, Kinds kinds, PictureFiles files) {
    this.index = index;
    this.kinds = kinds;
    this.files = files;
  }

  /** With the kinds that come with the program. */
  public static CheckContext of(BoardMap map, PictureFiles files) {
    return new CheckContext(new MapIndex(map), Kinds.standard(), files);
  }

  BoardMap map() {
    return index.map();
  }

  MapIndex index() {
    return index;
  }

  Optional<Kind> kind(Part part) {
    return kinds.of(part);
  }

  /** Where it can hurt by the usual limits, found out once however many checks ask. */
  Hazards hazards() {
    Hazards found = hazards;
    if (found == null) {
      found = Hazards.of(Circuit.of(map(), kinds), VoltageLimits.INSTRUMENTS);
      hazards = found;
    }
    return found;
  }

  /** The line-ups of the map's pictures, fitted once however many checks ask. */
  LineUps lineUps() {
    LineUps found = lineUps;
    if (found == null) {
      found = LineUps.of(map());
      lineUps = found;
    }
    return found;
  }

  /** The digest of the picture's file, computed once however many checks ask. */
  Optional<String> digest(Picture picture) {
    return digests.computeIfAbsent(picture.id(), id -> files.sha256(picture));
  }

  boolean knows(PinRef pin) {
    return map().part(pin.part()).flatMap(part -> part.pin(pin.pin())).isPresent();
  }

  boolean knows(Subject subject) {
    if (subject instanceof Subject.OfPart s) {
      return map().parts().has(s.part());
    }
    if (subject instanceof Subject.OfSection s) {
      return map().part(s.part()).flatMap(part -> part.section(s.section())).isPresent();
    }
    if (subject instanceof Subject.OfPin s) {
      return knows(s.pin());
    }
    return map().nets().has(((Subject.OfNet) subject).net());
  }

  /** The subjects' names, divided by commas; from a certain number on the rest is counted. */
  String names(List<? extends Subject> subjects) {
    String first =
        subjects.stream().limit(LISTED).map(map()::nameOf).collect(Collectors.joining(", "));
    int rest = subjects.size() - LISTED;
    return rest > 0 ? "%s and %s more".formatted(first, CountText.number(rest)) : first;
  }

  /** What people call the picture, or its name where the map doesn't have it. */
  String caption(PictureId picture) {
    return map().picture(picture).map(Picture::caption).orElse(picture.text());
  }
}
