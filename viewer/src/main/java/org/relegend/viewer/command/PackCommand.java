package org.relegend.viewer.command;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.relegend.map.PictureId;
import org.relegend.scan.Progress;
import org.relegend.share.PackOptions;
import org.relegend.share.PackReport;
import org.relegend.share.PackWriter;
import org.relegend.share.ShareException;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pack FOLDER FILE}. */
@Command(
    name = "pack",
    description = {
      "Packs a map into one file to give away, and says what went in and what stayed out.",
      "Photos go in with their pixels alone: no position, camera, owner or preview. Schematic pages",
      "stay out, only their digests, sizes and the places on them go in. So do names and notes,",
      "unless you ask for them. Keep the pack: it is the base when corrections come back (merge)."
    })
final class PackCommand extends JsonCommand {
  @Parameters(index = "0", paramLabel = "FOLDER", description = "the map's folder")
  private Path folder = Path.of("");

  @Parameters(
      index = "1",
      paramLabel = "FILE",
      description = "the new pack; its name should end in " + PackWriter.ENDING)
  private Path file = Path.of("");

  @Option(
      names = "--photo",
      paramLabel = "P",
      description = "a photo that goes along, by its name in the map; all where none is named")
  private List<String> photos = List.of();

  @Option(names = "--no-photos", description = "no photo goes along")
  private boolean noPhotos;

  @Option(
      names = "--pages",
      description = "the files of schematic pages go along: only where you may copy them")
  private boolean pages;

  @Option(names = "--notes", description = "free text goes along")
  private boolean notes;

  @Option(names = "--names", description = "names of who stands for things go along as they are")
  private boolean names;

  @Option(
      names = "--alias",
      paramLabel = "NAME=ALIAS",
      description = "what someone who stands for things is called in the pack")
  private Map<String, String> aliases = new LinkedHashMap<>();

  @Option(
      names = "--never",
      paramLabel = "TEXT",
      description = "a text that must not be in it, as a customer's name: nothing is written if so")
  private List<String> never = List.of();

  @Override
  CommandResult answer() throws CommandFailure, StoreException {
    try (MapFolder opened = openToRead(folder)) {
      PackOptions options = new PackOptions(chosen(opened), pages, notes, names, aliases, never);
      return result(PackWriter.write(opened, file, options, Progress.UNWATCHED));
    } catch (ShareException refused) {
      throw new CommandFailure(String.valueOf(refused.getMessage()));
    }
  }

  private Optional<Set<PictureId>> chosen(MapFolder opened) throws CommandFailure {
    if (noPhotos) {
      return Optional.of(Set.of());
    }
    if (photos.isEmpty()) {
      return Optional.empty();
    }
    Set<PictureId> chosen = new HashSet<>();
    for (String name : photos) {
      PictureId id =
          opened.map().pictures().stream()
              .filter(picture -> picture.id().text().equals(name))
              .map(picture -> picture.id())
              .findFirst()
              .orElseThrow(() -> new CommandFailure("the map has no photo \"" + name + "\""));
      chosen.add(id);
    }
    return Optional.of(chosen);
  }

  private CommandResult result(PackReport report) {
    return CommandResult.ok(
        () ->
            Json.object()
                .put("file", file.toString())
                .put("bytes", report.bytes())
                .put("map", report.digest())
                .put("in", Json.texts(report.wentIn()))
                .put("out", Json.texts(report.stayedOut())),
        out -> {
          out.println("Packed %s (%,d bytes).".formatted(file, report.bytes()));
          out.println("Went in:");
          report.wentIn().forEach(line -> out.println("  " + line));
          out.println("Stayed out:");
          report.stayedOut().forEach(line -> out.println("  " + line));
        });
  }
}
