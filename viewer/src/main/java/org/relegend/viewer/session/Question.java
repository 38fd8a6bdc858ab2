package org.relegend.viewer.session;

import java.util.List;
import org.relegend.map.HazardZone;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.PinRef;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.map.ZoneId;
import org.relegend.table.NetClash;

/** Something only the technician can say, before what they began is finished. */
public sealed interface Question {
  /** Pins to be joined are on another net already: join the two, move the pins, or leave them. */
  record PinsTaken(NetClash clash) implements Question {}

  /** A part was pointed at, and it has several pins. */
  record WhichPin(PartId part, List<PinRef> pins) implements Question {
    public WhichPin {
      pins = List.copyOf(pins);
    }
  }

  /** An outline is closed: what threatens inside it? */
  record WhichHazard(PictureId picture, List<Point> outline) implements Question {
    public WhichHazard {
      outline = List.copyOf(outline);
    }
  }

  /** What is the condition of this part of the unit? */
  record WhichCondition(PartId part) implements Question {}

  /** What is the twin of this part, section, pin or net? */
  record WhichTwin(Subject subject) implements Question {}

  /** Two points of a photo of unknown scale: how far apart are they? */
  record HowFar(PictureId picture, Point a, Point b) implements Question {}

  /** The four corners of the board are clicked: how wide and high is it? */
  record HowLarge(PictureId picture, List<Point> corners) implements Question {
    public HowLarge {
      corners = List.copyOf(corners);
    }
  }

  /** What threatens inside a hazard zone that is there already, and what is noted of it? */
  record ChangeZone(ZoneId zone, HazardZone.Kind kind, String note) implements Question {}

  /**
   * A part or net is to be removed from the map.
   *
   * @param places how many places go with it
   * @param joins how many pins are joined to nothing then
   * @param readings how many readings of the open job lie there
   */
  record RemoveEntry(Subject subject, int places, int joins, int readings) implements Question {}

  /** A hazard zone is to be removed from the map. */
  record RemoveZone(ZoneId zone) implements Question {}
}
