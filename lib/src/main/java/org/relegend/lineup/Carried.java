package org.relegend.lineup;

import java.util.List;
import org.relegend.map.Attestation;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.PlacementEdits;
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
public record Carried(
    Placement source,
    PictureId picture,
    Point at,
    List<Point> outline,
    Uncertainty error,
    List<PictureId> via) {
  public Carried {
    outline = List.copyOf(outline);
    via = List.copyOf(via);
  }

  /** The circle round the place that holds the true one 95 times in 100. */
  public double radius95() {
    return error.radius95();
  }

  /** Makes it the picture's own, where it is. */
  public PlacementEdits.Place confirmed(Attestation evidence) {
    return confirmedAt(at, evidence);
  }

  /** Makes it the picture's own, where it turned out to be. */
  public PlacementEdits.Place confirmedAt(Point seen, Attestation evidence) {
    double dx = seen.x() - at.x();
    double dy = seen.y() - at.y();
    return new PlacementEdits.Place(
        new Placement(
            picture,
            source.subject(),
            source.ordinal(),
            seen,
            outline.stream().map(corner -> corner.plus(dx, dy)).toList(),
            List.of(evidence)));
  }
}
