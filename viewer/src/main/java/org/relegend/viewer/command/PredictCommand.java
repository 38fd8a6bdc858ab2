package org.relegend.viewer.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.relegend.map.BoardMap;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.scan.PhotoBrightness;
import org.relegend.scan.PhotoFile;
import org.relegend.scan.PictureException;
import org.relegend.scan.Progress;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import org.relegend.twin.BrightnessImage;
import org.relegend.twin.TwinPredictions;
import org.relegend.twin.TwinResult;
import org.relegend.twin.TwinSearch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code predict FOLDER --photo P}. */
@Command(
    name = "predict",
    description = {
      "Tells where twins that aren't placed on a photo yet should lie.",
      "Each comes with the radius of the circle that should hold it 95 times in 100. Needs three placed pairs of twins at least; says",
      "so (exit code 1) where the layouts don't repeat. What the photo shows around the placed twin",
      "is looked for near the place, if the photo's file is there."
    })
final class PredictCommand extends JsonCommand {
  @Parameters(paramLabel = "FOLDER", description = "the map's folder")
  private Path folder = Path.of("");

  @Option(
      names = "--photo",
      required = true,
      paramLabel = "PHOTO",
      description = "a photo of the map")
  private String photo = "";

  @Mixin private KindsOption kinds = new KindsOption();

  @Override
  CommandResult answer() throws CommandFailure, StoreException {
    try (MapFolder opened = openToRead(folder)) {
      BoardMap map = opened.map();
      Picture picture = picture(map);
      TwinSearch search = TwinSearch.of(kinds.circuit(map));
      TwinResult twins = search.from(java.util.List.of(), search.known());
      Path file = opened.fileOf(picture);
      Optional<BrightnessImage> seen =
          Files.isRegularFile(file) ? Optional.of(brightness(file)) : Optional.empty();
      TwinPredictions predictions = TwinPredictions.on(map, picture.id(), twins, seen);
      return new CommandResult(
          predictions.fits() ? ExitCode.OK : ExitCode.DOES_NOT_HOLD,
          () -> json(map, predictions),
          out -> {
            TextTable table = new TextTable();
            for (TwinPredictions.Prediction place : predictions.all()) {
              table.row(
                  map.nameOf(place.part()),
                  String.format(Locale.ROOT, "%.0f,%.0f", place.at().x(), place.at().y()),
                  String.format(Locale.ROOT, "within %.0f", place.radius95()),
                  "as " + map.nameOf(place.twin()),
                  place.correlation() > 0 ? "found in the picture" : "");
            }
            table.print(out, "");
            out.println(predictions.text());
          });
    }
  }

  private Picture picture(BoardMap map) throws CommandFailure {
    try {
      Optional<Picture> found = map.picture(new PictureId(photo));
      if (found.isPresent() && found.get() instanceof Photo) {
        return found.get();
      }
    } catch (IllegalArgumentException noName) {
      // told below
    }
    throw new CommandFailure(
        "the map has no photo \"%s\": its photos are %s"
            .formatted(
                photo,
                String.join(
                    ", ",
                    map.pictures().stream()
                        .filter(Photo.class::isInstance)
                        .map(known -> known.id().text())
                        .toList())));
  }

  private static BrightnessImage brightness(Path file) throws CommandFailure {
    try {
      PhotoBrightness photo = PhotoBrightness.read(PhotoFile.probe(file), Progress.UNWATCHED);
      return new BrightnessImage(photo.width(), photo.height(), photo.pixels());
    } catch (PictureException unreadable) {
      throw new CommandFailure(String.valueOf(unreadable.getMessage()));
    }
  }

  private static Json json(BoardMap map, TwinPredictions predictions) {
    return Json.object()
        .put(
            "predictions",
            Json.array(
                predictions.all(),
                place ->
                    Json.object()
                        .put("part", map.nameOf(place.part()))
                        .put("twin", map.nameOf(place.twin()))
                        .put("picture", place.picture().text())
                        .put("x", place.at().x())
                        .put("y", place.at().y())
                        .put("radius95", place.radius95())
                        .put("correlation", place.correlation())))
        .put("told", predictions.text());
  }
}
