package org.relegend.viewer.session;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.relegend.hazard.UnmarkedZones;
import org.relegend.map.HazardZone;
import org.relegend.map.PictureId;
import org.relegend.map.ZoneId;

/**
 * Holds back whatever would show a place inside a hazard zone, or at a danger that follows from the
 * circuit and that nobody outlined, until its caution was read in this sitting. Nothing that leads
 * to a place may go past it, nor any move of the view by hand.
 */
public final class HazardGate {
  /**
   * A zone as it was when its caution was read: one that has grown or changed warns again. Of what
   * nobody outlined one reading holds for its kind on the whole picture, as for one zone there.
   */
  private record Read(
      ZoneId zone, PictureId picture, HazardZone.Kind kind, List<org.relegend.map.Point> outline) {
    private static final ZoneId UNMARKED = new ZoneId("unmarked");

    static Read of(HazardZone zone) {
      return UnmarkedZones.has(zone)
          ? new Read(UNMARKED, zone.picture(), zone.kind(), List.of())
          : new Read(zone.id(), zone.picture(), zone.kind(), zone.outline());
    }
  }

  private record Held(List<HazardZone> zones, Runnable then) {}

  private final ChangeNotifier hub;
  private final Set<Read> read = new HashSet<>();
  private @Nullable Held held;

  public HazardGate(ChangeNotifier hub) {
    this.hub = hub;
  }

  /** Runs this at once, or when the cautions of these zones were read; never, if turned back. */
  public void through(Set<HazardZone> zones, Runnable then) {
    List<HazardZone> unread = unread(zones);
    if (unread.isEmpty()) {
      then.run();
      return;
    }
    held = new Held(unread, then);
    hub.fire(Change.CAUTION);
  }

  /** Whether a place inside these zones may be shown now. */
  public boolean isOpen(Set<HazardZone> zones) {
    return unread(zones).isEmpty();
  }

  private List<HazardZone> unread(Set<HazardZone> zones) {
    return zones.stream().filter(zone -> !read.contains(Read.of(zone))).toList();
  }

  /** The zones whose caution must be read before what was asked for is done. */
  public Optional<List<HazardZone>> caution() {
    return Optional.ofNullable(held).map(Held::zones);
  }

  /** The technician read the caution: what was held back is done. */
  public void acknowledge() {
    hub.check();
    Held waiting = held;
    if (waiting == null) {
      return;
    }
    waiting.zones().forEach(zone -> read.add(Read.of(zone)));
    held = null;
    hub.fire(Change.CAUTION);
    waiting.then().run();
  }

  /** The technician would rather not: what was held back is dropped. */
  public void turnBack() {
    hub.check();
    held = null;
    hub.fire(Change.CAUTION);
  }

  /** Nobody has read anything yet, as with another map. */
  public void reset() {
    read.clear();
    held = null;
  }
}
