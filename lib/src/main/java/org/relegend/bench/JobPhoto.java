package org.relegend.bench;

import java.util.List;
import org.relegend.lineup.PointPair;
import org.relegend.map.Keyed;
import org.relegend.map.NameRules;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs.Origin;

/**
 * A photo of this very unit.
 *
 * @param photo its file lies in the job's folder
 * @param onto the map's photo that it is lined up to; empty for close-ups and while it isn't
 * @param origin how the pairs came about
 * @param pairs the same spots on this photo (from) and on the map's (to), from which the line-up is
 *     computed; empty with {@code onto}
 * @param shows the parts a close-up shows
 */
public record JobPhoto(
    Photo photo, String onto, Origin origin, List<PointPair> pairs, List<PartId> shows)
    implements Keyed<PictureId> {
  public JobPhoto {
    if (!onto.isEmpty()) {
      NameRules.checkedToken("picture name", onto);
    }
    pairs = List.copyOf(pairs);
    shows = List.copyOf(shows);
    if (onto.isEmpty() != pairs.isEmpty()) {
      throw new IllegalArgumentException(
          "photo %s: a line-up needs the map's photo and pairs of points".formatted(photo.id()));
    }
  }

  /** One that isn't lined up yet. */
  public static JobPhoto untied(Photo photo, List<PartId> shows) {
    return new JobPhoto(photo, "", Origin.CLICKED, List.of(), shows);
  }

  /** The same photo, tied to one of the map by these pairs. */
  public JobPhoto tied(PictureId onto, Origin found, List<PointPair> pairs) {
    return new JobPhoto(photo, onto.text(), found, pairs, shows);
  }

  /** The same photo without its line-up. */
  public JobPhoto untied() {
    return untied(photo, shows);
  }

  /** The same photo as a close-up of these parts. */
  public JobPhoto showing(List<PartId> parts) {
    return new JobPhoto(photo, onto, origin, pairs, parts);
  }

  @Override
  public PictureId key() {
    return photo.id();
  }

  public boolean linedUp() {
    return !onto.isEmpty();
  }
}
