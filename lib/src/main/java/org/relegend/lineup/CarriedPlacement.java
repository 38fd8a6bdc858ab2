package org.relegend.lineup;

import java.util.List;
import org.relegend.map.Attestation;
import org.relegend.map.Edit;
import org.relegend.map.MapTables;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;

/**
 * Where something should be seen on a picture that it wasn't placed on: a placement of another
 * picture, carried over.
 *
 * @param source the placement that was carried
 * @param outline the body's outline as it would be seen, if it is known; the part may hide it
 * @param error of the place, in units of the picture it was carried to; it knows nothing of parts
 *     that lean over their pads, nor of a source that is wrong itself
 * @param via the pictures on the way, the source's first, this one last
 */
public record CarriedPlacement(
    Placement source,
    PictureId picture,
    Point at,
    List<Point> outline,
    Uncertainty error,
    List<PictureId> via) {
  public CarriedPlacement {
    outline = List.copyOf(outline);
    via = List.copyOf(via);
  }

  /** The circle round the place that holds the true one 95 times in 100. */
  public double radius95() {
    return error.radius95();
  }

  /** As a placement would look, on the evidence of its source. */
  public Placement asPlacement() {
    return placed(source.evidence());
  }

  /** Makes it the picture's own. */
  public Edit confirmed(Attestation evidence) {
    return MapTables.PLACEMENTS.put(placed(List.of(evidence)));
  }

  private Placement placed(List<Attestation> evidence) {
    return new Placement(picture, source.subject(), source.ordinal(), at, outline, evidence);
  }
}
