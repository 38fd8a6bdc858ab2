package org.relegend.viewer.mode.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.bench.Job;
import org.relegend.bench.JobPhoto;
import org.relegend.bench.JobTable;
import org.relegend.bench.OwnPhotos;
import org.relegend.lineup.PointPair;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.MapDocument;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Room;
import org.relegend.viewer.session.Session;

/** Photos of this very unit: added to the job, tied to the map's, close-ups tied to parts. */
public final class UnitPhotoEditor implements Room {
  private final MapDocument document;
  private final OpenJob bench;
  private final ChangeNotifier hub;

  public UnitPhotoEditor(Session session) {
    this.document = session.document();
    this.bench = session.room(OpenJob.class);
    this.hub = session.hub();
  }

  private Optional<Job> job() {
    return bench.job();
  }

  /** Whether photos can be added. */
  public boolean mayChange() {
    return bench.isOpen() && !bench.isReadOnly();
  }

  /** What a photo of the job is known by among the pictures. */
  public PictureId idOver(PictureId own) {
    return OwnPhotos.idOver(document.map(), own);
  }

  /**
   * Adds a photo to the job.
   *
   * @param photo its file lies in the job's folder already
   * @param shows the parts that a close-up shows; none for a photo of a whole side
   */
  public boolean add(Photo photo, List<PartId> shows) {
    return bench.apply(JobTable.PHOTOS.put(JobPhoto.untied(photo, shows)));
  }

  /** From now on a photo is a close-up of these parts; of none, it is one of a whole side. */
  public boolean shows(JobPhoto photo, List<PartId> parts) {
    return bench.apply(JobTable.PHOTOS.put(photo.showing(parts)));
  }

  /** Says that no photo of this unit is there. */
  public void sayNone() {
    hub.say(Notice.Kind.NO_UNIT_PHOTO);
  }

  /** Takes a photo out of the job; its file stays in the folder, so that this can be undone. */
  public boolean remove(PictureId picture) {
    return document
        .own(picture)
        .map(own -> bench.apply(JobTable.PHOTOS.remove(own.key())))
        .orElse(false);
  }

  /** Close-ups that show a part, and photos that its condition names, among the pictures. */
  public List<PictureId> closeUps(PartId part) {
    List<PictureId> found = new ArrayList<>();
    job()
        .ifPresent(
            job -> {
              job.photos().stream()
                  .filter(own -> own.shows().contains(part))
                  .map(own -> idOver(own.key()))
                  .forEach(found::add);
              job.condition(part).stream()
                  .flatMap(condition -> condition.photos().stream())
                  .filter(job.photos()::has)
                  .map(this::idOver)
                  .filter(id -> !found.contains(id))
                  .forEach(found::add);
            });
    return List.copyOf(found);
  }

  /** Whether these pairs tie a photo of the unit, and so belong to the job. */
  public boolean isTiedBy(PicturePairs.Key pairs) {
    return document.isOwn(pairs.a()) || document.isOwn(pairs.b());
  }

  /** Ties a photo of the unit to one of the map. */
  public boolean tie(PicturePairs pairs) {
    PictureId own = document.isOwn(pairs.a()) ? pairs.a() : pairs.b();
    PictureId onto = own.equals(pairs.a()) ? pairs.b() : pairs.a();
    List<PointPair> points =
        pairs.from(own).stream().map(spot -> new PointPair(spot.onA(), spot.onB())).toList();
    return document
        .own(own)
        .map(photo -> bench.apply(JobTable.PHOTOS.put(photo.tied(onto, pairs.origin(), points))))
        .orElse(false);
  }

  public boolean untie(PicturePairs.Key pairs) {
    return document
        .own(document.isOwn(pairs.a()) ? pairs.a() : pairs.b())
        .map(photo -> bench.apply(JobTable.PHOTOS.put(photo.untied())))
        .orElse(false);
  }
}
