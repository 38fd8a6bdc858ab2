package org.relegend.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.lineup.Extent;
import org.relegend.lineup.Facing;
import org.relegend.lineup.Fit;
import org.relegend.lineup.Fitter;
import org.relegend.lineup.LineUp;
import org.relegend.lineup.Model;
import org.relegend.map.BoardMap;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;

/** The map shown on photos of this very unit, through the pairs that tie the two. */
public final class OwnPhotos {
  /**
   * Where a placement of the map lies on a photo of the job.
   *
   * @param at in pixels of the job's photo
   * @param radius95 of the circle that holds the true place 95 times in 100, in the same pixels
   */
  public record Seen(Subject subject, Point at, double radius95) {}

  private OwnPhotos() {}

  /** From the map's photo to the job's; empty where it isn't lined up, or the pairs don't do. */
  public static Optional<LineUp> lineUp(BoardMap map, JobPhoto own) {
    Optional<Picture> onto =
        own.linedUp() ? map.picture(new PictureId(own.onto())) : Optional.empty();
    return onto.flatMap(picture -> fitted(picture, own));
  }

  private static Optional<LineUp> fitted(Picture onto, JobPhoto own) {
    boolean opposite = onto instanceof Photo photo && photo.side() != own.photo().side();
    return Fitter.of(Model.HOMOGRAPHY)
                .expecting(opposite ? Facing.OPPOSITE : Facing.SAME)
                .fit(
                    own.pairs(),
                    Extent.of(own.photo().width(), own.photo().height()),
                    Extent.of(onto.width(), onto.height()))
            instanceof Fit fit
        ? Optional.of(fit.lineUp().reversed())
        : Optional.empty();
  }

  /** The map's placements that lie on a photo of the job, in order of their subjects. */
  public static List<Seen> placements(BoardMap map, JobPhoto own) {
    List<Seen> seen = new ArrayList<>();
    Optional<LineUp> lineUp = lineUp(map, own);
    for (Placement placement : lineUp.isPresent() ? map.placements() : List.<Placement>of()) {
      if (placement.picture().text().equals(own.onto())) {
        lineUp
            .get()
            .carry(placement.at())
            .filter(at -> isOn(own.photo(), at))
            .ifPresent(
                at ->
                    seen.add(
                        new Seen(placement.subject(), at, lineUp.get().radius95(placement.at()))));
      }
    }
    return List.copyOf(seen);
  }

  private static boolean isOn(Photo photo, Point at) {
    return at.x() >= 0 && at.y() >= 0 && at.x() <= photo.width() && at.y() <= photo.height();
  }
}
