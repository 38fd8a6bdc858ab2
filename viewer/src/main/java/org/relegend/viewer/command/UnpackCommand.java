package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.relegend.map.BoardMap;
import org.relegend.map.Page;
import org.relegend.map.Picture;
import org.relegend.share.ShareException;
import org.relegend.share.Trust;
import org.relegend.share.Unpack;
import org.relegend.store.Json;
import org.relegend.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code unpack FILE FOLDER [--scan FILE …]}. */
@Command(
    name = "unpack",
    description = {
      "Unpacks a map that somebody else packed, and says how far it is measured and how far inferred.",
      "A scan of your own with the same digest is put in its place at once; add any other (add)",
      "and line it up with the one it stands for (lineup), as your own photos."
    })
final class UnpackCommand extends Answering {
  @Parameters(index = "0", paramLabel = "FILE", description = "the pack")
  private Path file = Path.of("");

  @Parameters(index = "1", paramLabel = "FOLDER", description = "a new folder")
  private Path folder = Path.of("");

  @Option(names = "--scan", paramLabel = "FILE", description = "a scan or photo of your own")
  private List<Path> scans = List.of();

  @Override
  Answer answer() throws CommandFailure, StoreException {
    try (Unpack pack = Unpack.open(file)) {
      List<Picture> missing = pack.into(folder, scans);
      BoardMap map = pack.map();
      Trust trust = Trust.of(map);
      return Answer.ok(() -> json(map, missing, trust), out -> print(out, map, missing, trust));
    } catch (ShareException refused) {
      throw new CommandFailure(String.valueOf(refused.getMessage()));
    }
  }

  private Json json(BoardMap map, List<Picture> missing, Trust trust) {
    return Json.object()
        .put("folder", folder.toString())
        .put("id", map.id())
        .put("title", map.info().title())
        .put("missing", Json.array(missing, picture -> Json.of(picture.id().text())))
        .put("authors", Json.array(trust.authors(), UnpackCommand::json));
  }

  private static Json json(Trust.Author author) {
    Json.Obj evidence = Json.object();
    for (var said : author.said().entrySet()) {
      evidence = evidence.put(said.getKey().word(), said.getValue());
    }
    return Json.object().put("author", author.name()).put("said", evidence);
  }

  private void print(PrintWriter out, BoardMap map, List<Picture> missing, Trust trust) {
    out.println("Unpacked \"%s\" to %s.".formatted(map.info().title(), folder));
    trust.lines().forEach(out::println);
    for (Picture picture : missing) {
      Optional<String> kind = picture instanceof Page ? Optional.of("page") : Optional.empty();
      out.println(
          "%s %s is not in it: add your own, then line the two up (lineup %s %s OWN)."
              .formatted(kind.orElse("photo"), picture.caption(), folder, picture.id()));
    }
  }
}
