package org.relegend.viewer.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.bench.Job;
import org.relegend.bench.JobPhoto;
import org.relegend.bench.JobTable;
import org.relegend.bench.OwnPhotos;
import org.relegend.lineup.PhotoResult;
import org.relegend.map.BoardMap;
import org.relegend.map.Designator;
import org.relegend.map.EditGroup;
import org.relegend.map.EditRefusedException;
import org.relegend.map.MapIndex;
import org.relegend.map.MapTables;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.PicturePairs.Origin;
import org.relegend.scan.MatchImage;
import org.relegend.scan.PictureException;
import org.relegend.scan.PictureIntake;
import org.relegend.scan.Progress;
import org.relegend.store.JobFolder;
import org.relegend.store.JobMap;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;

/** Adds a photo of one unit to its job, and lines it up with the map's of that side. */
record UnitPhotoImport(Path job, Path file, PictureIntake.Shown shown, String closeUp) {
  /**
   * Adds it.
   *
   * @throws CommandFailure where the job can't take it
   */
  CommandResult added()
      throws CommandFailure, StoreException, EditRefusedException, PictureException {
    try (JobFolder opened = JobFolder.open(job)) {
      if (opened.readOnly()) {
        throw new CommandFailure(String.join(" ", opened.notices()));
      }
      MapFolder under = MapFolder.openReadOnly(JobMap.of(opened));
      BoardMap map = under.map();
      if (!map.boards().has(shown.board())) {
        throw new CommandFailure(
            "--board: the job's map has no board \"%s\"".formatted(shown.board()));
      }
      List<PartId> parts = parts(new MapIndex(map));
      Job before = opened.job();
      Photo photo = taken(OwnPhotos.over(map, before.photos()));
      JobPhoto untied = JobPhoto.untied(photo, parts);
      Tie tie = parts.isEmpty() ? tied(untied, under) : new Tie(untied, "a close-up");
      opened.save(JobTable.PHOTOS.put(tie.photo()).applyTo(before));
      return result(tie);
    }
  }

  /** What came of lining it up, and that in words. */
  private record Tie(JobPhoto photo, String text) {}

  private List<PartId> parts(MapIndex index) throws CommandFailure {
    List<PartId> parts = new ArrayList<>();
    for (String name : closeUp.split("[ ,]+", -1)) {
      if (!name.isEmpty()) {
        List<Part> named = index.partsNamed(new Designator(name));
        if (named.isEmpty()) {
          throw new CommandFailure("--shows: the map has no part \"%s\"".formatted(name));
        }
        parts.add(named.get(0).id());
      }
    }
    return parts;
  }

  private Photo taken(BoardMap laid) throws PictureException, StoreException {
    EditGroup adding = new PictureIntake(job, laid).photo(file, shown, Progress.UNWATCHED);
    return (Photo) MapTables.PICTURES.putBy(adding.steps()).get(0);
  }

  private Tie tied(JobPhoto untied, MapFolder under) throws PictureException {
    Optional<Photo> onto =
        under.map().pictures().stream()
            .filter(Photo.class::isInstance)
            .map(Photo.class::cast)
            .filter(photo -> photo.board().equals(shown.board()) && photo.side() == shown.side())
            .findFirst();
    if (onto.isEmpty()) {
      return new Tie(untied, "not lined up: the map has no photo of that side");
    }
    PhotoResult result =
        MatchImage.of(job.resolve(untied.photo().file()), Progress.UNWATCHED)
            .lineUp(MatchImage.of(under.fileOf(onto.get()), Progress.UNWATCHED), () -> false);
    return result instanceof PhotoResult.Aligned aligned
        ? new Tie(
            untied.tied(onto.get().id(), Origin.AUTOMATIC, aligned.kept()),
            "lined up with %s".formatted(onto.get().caption()))
        : new Tie(
            untied,
            "not lined up: %s Line it up by pairs in the viewer."
                .formatted(((PhotoResult.Unaligned) result).message()));
  }

  private static CommandResult result(Tie tie) {
    Photo photo = tie.photo().photo();
    return CommandResult.ok(
        () ->
            Json.object()
                .put("picture", photo.id().text())
                .put("file", photo.file())
                .put("sha256", photo.sha256())
                .put("width", photo.width())
                .put("height", photo.height())
                .put("onto", tie.photo().onto()),
        out ->
            out.println(
                "Added %s to the job as %s (%.0f x %.0f), %s."
                    .formatted(
                        photo.id(),
                        photo.file(),
                        photo.width(),
                        photo.height(),
                        tie.text().replaceFirst("\\.$", ""))));
  }
}
