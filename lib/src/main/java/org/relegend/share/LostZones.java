package org.relegend.share;

import org.jspecify.annotations.Nullable;
import org.relegend.hazard.ZoneOutline;
import org.relegend.map.BoardMap;
import org.relegend.map.HazardZone;

/** Hazard zones that a change takes something away from: nobody loses one without being asked. */
final class LostZones {
  private LostZones() {}

  /** Whether any zone is gone, with its photo or without, or warns of less than it did. */
  static boolean any(BoardMap base, BoardMap changed) {
    return base.zones().stream()
        .anyMatch(
            zone -> changed.zones().find(zone.id()).map(now -> lessened(zone, now)).orElse(true));
  }

  /** Whether an entry is a zone that warns of something else now, elsewhere, or of a part of it. */
  static boolean lessened(@Nullable Object before, @Nullable Object now) {
    return before instanceof HazardZone was
        && now instanceof HazardZone is
        && (was.kind() != is.kind()
            || !was.picture().equals(is.picture())
            || !ZoneOutline.covers(is.outline(), was.outline()));
  }
}
