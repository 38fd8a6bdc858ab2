package org.relegend.viewer.command;

import java.nio.file.Path;
import java.util.UUID;
import org.relegend.map.BoardMap;
import org.relegend.map.MapInfo;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code new FOLDER --title T}. */
@Command(name = "new", description = "Makes an empty map.")
final class NewCommand extends JsonCommand {
  @Parameters(paramLabel = "FOLDER", description = "a folder without a map; made if need be")
  private Path folder = Path.of("");

  @Option(names = "--title", required = true, paramLabel = "T", description = "what the map is of")
  private String title = "";

  @Option(names = "--maker", paramLabel = "M", description = "who made the instrument")
  private String maker = "";

  @Option(names = "--model", paramLabel = "M", description = "its model")
  private String model = "";

  @Option(names = "--issue", paramLabel = "I", description = "the revision the map is true of")
  private String issue = "";

  @Override
  CommandResult answer() throws CommandFailure, StoreException {
    BoardMap map = BoardMap.empty(UUID.randomUUID().toString(), info());
    MapFolder.create(folder, map).close();
    return CommandResult.ok(
        () ->
            Json.object()
                .put("folder", folder.toString())
                .put("id", map.id())
                .put("title", map.info().title()),
        out -> {
          out.println("Made an empty map in " + folder + ".");
          out.println("Next: add a schematic page (add) or type in tables (import).");
        });
  }

  private MapInfo info() throws CommandFailure {
    try {
      return new MapInfo(title, maker, model, issue, "");
    } catch (IllegalArgumentException unfit) {
      throw new CommandFailure(String.valueOf(unfit.getMessage()));
    }
  }
}
