package org.relegend.viewer.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardTurn;
import org.relegend.map.EditGroup;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Page;
import org.relegend.map.Picture;
import org.relegend.map.Side;
import org.relegend.scan.PictureException;
import org.relegend.scan.PictureIntake;
import org.relegend.scan.Progress;
import org.relegend.store.JobFolder;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code add FOLDER FILE --page N} or {@code --photo NAME --board B --side component|solder}. */
@Command(
    name = "add",
    description = {
      "Copies a schematic page or a photo into the map.",
      "Photos are stored upright, whatever turn the camera noted. Into the folder of a job goes a",
      "photo of that unit, which stays private and is lined up with the map's of that side."
    })
final class AddCommand extends JsonCommand {
  @Parameters(index = "0", paramLabel = "FOLDER", description = "the map's folder, or a job's")
  private Path folder = Path.of("");

  @Parameters(index = "1", paramLabel = "FILE", description = "a PDF, JPEG, PNG or TIFF file")
  private Path file = Path.of("");

  @ArgGroup(multiplicity = "1")
  private What what = new What();

  @Option(names = "--board", paramLabel = "B", description = "the board a photo shows")
  private String board = "main";

  @Option(names = "--side", paramLabel = "SIDE", description = "component or solder")
  private String side = "";

  @Option(
      names = "--turned-over",
      paramLabel = "EDGE",
      description = "for the solder side: over its side-edge (as a book's page) or its top-edge")
  private String turn = BoardTurn.UNKNOWN.word();

  @Option(
      names = "--shows",
      paramLabel = "PARTS",
      description = "of a job's photo: the parts that a close-up shows, like C102,R106")
  private String shows = "";

  /** Page or photo. */
  static final class What {
    @Option(names = "--page", paramLabel = "N", description = "page N of the file, from 1")
    private @Nullable Integer page;

    @Option(names = "--photo", paramLabel = "NAME", description = "a photo, called so")
    private @Nullable String photo;
  }

  @Override
  CommandResult answer() throws CommandFailure, StoreException, EditRefusedException {
    try {
      return JobFolder.isJob(folder) ? intoJob() : intoMap();
    } catch (PictureException unfit) {
      throw new CommandFailure(String.valueOf(unfit.getMessage()));
    } catch (IllegalArgumentException unfit) {
      throw new CommandFailure(String.valueOf(unfit.getMessage()));
    }
  }

  private CommandResult intoJob()
      throws CommandFailure, StoreException, EditRefusedException, PictureException {
    if (what.page != null) {
      throw new CommandFailure(
          "--page: pages belong to a map, and %s holds a job; name the map's folder"
              .formatted(folder));
    }
    return new UnitPhotoImport(folder, file, shown(), shows).added();
  }

  private CommandResult intoMap()
      throws CommandFailure, StoreException, EditRefusedException, PictureException {
    if (!shows.isEmpty()) {
      throw new CommandFailure(
          "--shows: close-ups belong to a job, and %s holds a map".formatted(folder));
    }
    try (MapFolder opened = openToChange(folder)) {
      BoardMap before = opened.map();
      BoardMap after = edit(new PictureIntake(folder, before)).applyTo(before);
      opened.save(after);
      List<Picture> added = new ArrayList<>(after.pictures());
      added.removeIf(picture -> before.pictures().has(picture.id()));
      if (added.isEmpty()) {
        throw new CommandFailure("the map has this picture already");
      }
      return result(added.get(0));
    }
  }

  private EditGroup edit(PictureIntake intake)
      throws CommandFailure, PictureException, StoreException {
    Integer page = what.page;
    if (page != null) {
      return intake.pages(file, "", List.of(page), Progress.UNWATCHED);
    }
    return intake.photo(file, shown(), Progress.UNWATCHED);
  }

  private PictureIntake.Shown shown() throws CommandFailure {
    if (side.isEmpty()) {
      throw new CommandFailure("say which side the photo shows: --side component or --side solder");
    }
    String name = what.photo == null ? "" : what.photo;
    return new PictureIntake.Shown(name, new BoardId(board), Side.of(side), BoardTurn.of(turn));
  }

  private static CommandResult result(Picture picture) {
    return CommandResult.ok(
        () ->
            Json.object()
                .put("picture", picture.id().text())
                .put("file", picture.file())
                .put("sha256", picture.sha256())
                .put("width", picture.width())
                .put("height", picture.height()),
        out ->
            out.println(
                "Added %s %s as %s (%.0f x %.0f %s)."
                    .formatted(
                        picture instanceof Page ? "schematic page" : "photo",
                        picture.id(),
                        picture.file(),
                        picture.width(),
                        picture.height(),
                        picture.file().endsWith(".pdf") ? "points" : "pixels")));
  }
}
