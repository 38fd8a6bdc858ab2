package org.relegend.bench;

import java.util.List;
import org.relegend.lineup.PointPair;
import org.relegend.map.Keyed;
import org.relegend.map.Names;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;

/**
 * A photo of this very unit.
 *
 * @param photo its file lies in the job's folder
 * @param onto the map's photo that it is lined up to; empty for close-ups and while it isn't
 * @param pairs the same spots on this photo (from) and on the map's (to), from which the line-up is
 *     computed; empty with {@code onto}
 * @param shows the parts a close-up shows
 */
public record JobPhoto(Photo photo, String onto, List<PointPair> pairs, List<PartId> shows)
    implements Keyed<PictureId> {
  public JobPhoto {
    if (!onto.isEmpty()) {
      Names.checkedToken("picture name", onto);
    }
    pairs = List.copyOf(pairs);
    shows = List.copyOf(shows);
    if (onto.isEmpty() != pairs.isEmpty()) {
      throw new IllegalArgumentException(
          "photo %s: a line-up needs the map's photo and pairs of points".formatted(photo.id()));
    }
  }

  @Override
  public PictureId key() {
    return photo.id();
  }

  public boolean linedUp() {
    return !onto.isEmpty();
  }
}
