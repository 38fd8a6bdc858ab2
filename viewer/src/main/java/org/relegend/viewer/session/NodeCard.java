package org.relegend.viewer.session;

import java.util.List;
import java.util.Optional;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.Placement;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;

/**
 * One card of the node strip.
 *
 * @param subject a pin that is joined there; a part; or a whole net where its pins are too many
 * @param page where it is seen on a page
 * @param photo where it is seen on a photo
 * @param unit where it is seen on a photo of this very unit, if {@code photo} isn't one
 * @param twin the same in the other channel
 * @param follows what the twin follows from; empty where people said it
 * @param twinPhoto where that is seen on a photo
 * @param held whether the place of the twin isn't shown, since the caution of its zone wasn't read
 * @param joined how it is known that it is joined
 * @param zones the hazard zones around it
 */
public record NodeCard(
    Subject subject,
    Optional<Placement> page,
    Optional<Placement> photo,
    Optional<Placement> unit,
    Optional<Subject> twin,
    Optional<Follows> follows,
    Optional<Placement> twinPhoto,
    boolean held,
    Optional<Evidence> joined,
    List<HazardZone> zones) {
  /**
   * Why it is the twin, though nobody said so.
   *
   * @param others how many more pairs that people said stand for it
   */
  public record Follows(TwinPair.Key from, int others) {}

  public NodeCard {
    zones = List.copyOf(zones);
  }

  /** The same without the twin's place. */
  public NodeCard holding() {
    return new NodeCard(
        subject, page, photo, unit, twin, follows, Optional.empty(), true, joined, zones);
  }
}
