package org.relegend.viewer.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.relegend.lineup.Rectification;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.scan.PictureException;
import org.relegend.scan.Progress;
import org.relegend.scan.StraightenedPhoto;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code straighten FOLDER PHOTO --corners "x,y x,y x,y x,y" --size WxH}. */
@Command(
    name = "straighten",
    description = {
      "Adds a photo drawn anew as the board is seen square on.",
      "It is lined up with the first: what is placed on one shows on both. Told by the corners of the board, or of any",
      "rectangle on it, in any order, and by its width and height in millimetres."
    })
final class StraightenCommand extends JsonCommand {
  private static final Pattern POINT = Pattern.compile("([-+.\\dEe]+),([-+.\\dEe]+)");
  private static final Pattern SIZE = Pattern.compile("([.\\d]+)\\s*[xX]\\s*([.\\d]+)");

  @Parameters(index = "0", paramLabel = "FOLDER", description = "the map's folder")
  private Path folder = Path.of("");

  @Parameters(index = "1", paramLabel = "PHOTO", description = "a photo of the map")
  private String name = "";

  @Option(
      names = "--corners",
      paramLabel = "\"x,y x,y x,y x,y\"",
      required = true,
      description = "four points of the photo, in pixels")
  private String corners = "";

  @Option(
      names = "--size",
      paramLabel = "WxH",
      required = true,
      description = "width along the upper edge, and height, in mm")
  private String size = "";

  @Option(names = "--title", paramLabel = "T", description = "what the new photo is called")
  private String title = "";

  @Mixin private AuthorOption author = new AuthorOption();

  @Override
  CommandResult answer() throws CommandFailure, StoreException, EditRefusedException {
    Rectification view = view();
    try (MapFolder opened = openToChange(folder)) {
      Photo photo = photo(opened);
      StraightenedPhoto made =
          StraightenedPhoto.of(
              folder,
              opened.map(),
              photo,
              view,
              title.isEmpty() ? photo.caption() + " square on" : title,
              author.attestation(Evidence.SEEN),
              Progress.UNWATCHED);
      opened.save(made.edit().applyTo(opened.map()));
      return result(photo, made);
    } catch (PictureException unfit) {
      throw new CommandFailure(String.valueOf(unfit.getMessage()));
    }
  }

  private Rectification view() throws CommandFailure {
    Matcher both = SIZE.matcher(size.strip());
    if (!both.matches()) {
      throw new CommandFailure(
          "--size \"%s\": it is width and height in mm, such as 250x162".formatted(size));
    }
    List<Point> points = new ArrayList<>();
    try {
      for (String cell : corners.strip().split("\\s+", -1)) {
        Matcher point = POINT.matcher(cell);
        if (!point.matches()) {
          throw new CommandFailure(
              "--corners: \"%s\" is no point; write four of them as \"x,y x,y x,y x,y\""
                  .formatted(cell));
        }
        points.add(
            new Point(Double.parseDouble(point.group(1)), Double.parseDouble(point.group(2))));
      }
      return Rectification.of(
          points, Double.parseDouble(both.group(1)), Double.parseDouble(both.group(2)));
    } catch (IllegalArgumentException unfit) {
      throw new CommandFailure("--corners, --size: " + unfit.getMessage());
    }
  }

  private Photo photo(MapFolder opened) throws CommandFailure {
    Optional<Picture> known = Optional.empty();
    try {
      known = opened.map().picture(new PictureId(name));
    } catch (IllegalArgumentException noName) {
      // then there is no such photo
    }
    if (known.orElse(null) instanceof Photo photo) {
      return photo;
    }
    throw new CommandFailure(
        "the map has no photo \"%s\": its photos are %s"
            .formatted(
                name,
                String.join(
                    ", ",
                    opened.map().pictures().stream()
                        .filter(Photo.class::isInstance)
                        .map(picture -> picture.id().text())
                        .toList())));
  }

  private static CommandResult result(Photo photo, StraightenedPhoto made) {
    Rectification view = made.view();
    List<Json> numbers = new ArrayList<>();
    for (double number : view.toPhoto().matrix()) {
      numbers.add(Json.of(number));
    }
    return CommandResult.ok(
        () ->
            Json.object()
                .put("picture", made.picture().text())
                .put("from", photo.id().text())
                .put("width", (double) view.width())
                .put("height", (double) view.height())
                .put("pixels_per_mm", view.pixelsPerMillimetre())
                .put("matrix", numbers),
        out ->
            out.println(
                String.format(
                    Locale.ROOT,
                    "Added %s (%d x %d, %.2f pixels to the millimetre), lined up with %s.",
                    made.picture(),
                    view.width(),
                    view.height(),
                    view.pixelsPerMillimetre(),
                    photo.id())));
  }
}
