package org.relegend.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.lineup.PlacementCarrier;
import org.relegend.lineup.StoredLineUp;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.PicturePairs.Spot;
import org.relegend.map.Table;

/**
 * The photos of this very unit beside those of the map, as one map to be looked at: line-ups then
 * carry placements and hazard zones onto them as onto any other photo. Such a map is never saved.
 */
public final class OwnPhotos {
  private OwnPhotos() {}

  /**
   * The map with the job's photos added, and the pairs that tie them to the map's. What ties one to
   * a photo that isn't in the map, or that shows another board, is left out.
   */
  public static BoardMap over(BoardMap map, Table<PictureId, JobPhoto> photos) {
    if (photos.isEmpty()) {
      return map;
    }
    List<Picture> pictures = new ArrayList<>();
    List<PicturePairs> pairs = new ArrayList<>();
    for (JobPhoto own : photos) {
      Photo renamed = own.photo().withId(idOver(map, own.key()));
      pictures.add(renamed);
      pairs(map, own, renamed).ifPresent(pairs::add);
    }
    return map.with(MapTables.PICTURES, map.pictures().withAll(pictures))
        .with(MapTables.LINE_UPS, map.lineUps().withAll(pairs));
  }

  /**
   * What is printed for a job: photos of this unit that are lined up stand in the place of the
   * map's of the same side, with all that line-ups carry onto them; its others are left out.
   */
  public static BoardMap printed(BoardMap map, Table<PictureId, JobPhoto> photos) {
    if (photos.isEmpty()) {
      return PlacementCarrier.of(map).zoned();
    }
    PlacementCarrier carrier = PlacementCarrier.of(over(map, photos));
    BoardMap shown = carrier.seen();
    for (JobPhoto own : photos) {
      PictureId id = idOver(map, own.key());
      if (own.shows().isEmpty() && isTied(carrier, own, id)) {
        shown = shown.with(MapTables.PICTURES, shown.pictures().with(titled(own, id)));
        for (Picture replaced : ofThatSide(map, own.photo())) {
          shown = shown.withoutPicture(replaced.id());
        }
      } else {
        shown = shown.withoutPicture(id);
      }
    }
    return shown;
  }

  /** A photo of the job under the name that is printed. */
  private static Photo titled(JobPhoto own, PictureId id) {
    return own.photo().withId(id).withTitle(own.photo().caption() + ", this unit");
  }

  private static boolean isTied(PlacementCarrier carrier, JobPhoto own, PictureId id) {
    return own.linedUp()
        && carrier.lineUps().result(id, new PictureId(own.onto())).orElse(null)
            instanceof StoredLineUp.Lined;
  }

  private static List<Photo> ofThatSide(BoardMap map, Photo own) {
    return map.pictures().stream()
        .filter(Photo.class::isInstance)
        .map(Photo.class::cast)
        .filter(photo -> photo.board().equals(own.board()) && photo.side() == own.side())
        .toList();
  }

  /** What a photo of the job is known by beside the map's, one of which may have the same id. */
  public static PictureId idOver(BoardMap map, PictureId own) {
    PictureId id = own;
    while (map.pictures().has(id)) {
      id = new PictureId(id + "~unit");
    }
    return id;
  }

  /** The job's photo that is known so beside the map's. */
  public static Optional<JobPhoto> find(
      BoardMap map, Table<PictureId, JobPhoto> photos, PictureId idOver) {
    return photos.stream().filter(own -> idOver(map, own.key()).equals(idOver)).findFirst();
  }

  private static Optional<PicturePairs> pairs(BoardMap map, JobPhoto own, Photo renamed) {
    if (!own.linedUp()) {
      return Optional.empty();
    }
    List<Spot> spots = own.pairs().stream().map(pair -> new Spot(pair.from(), pair.to())).toList();
    return map.picture(new PictureId(own.onto()))
        .filter(onto -> onto.shownBoard().equals(renamed.shownBoard()))
        .map(
            onto ->
                new PicturePairs(
                    renamed.id(),
                    onto.id(),
                    own.origin(),
                    spots,
                    List.of(new Attestation(Evidence.MATCHED, "", Instant.EPOCH))));
  }
}
