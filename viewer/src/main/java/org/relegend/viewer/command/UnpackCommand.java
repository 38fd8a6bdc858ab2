package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.relegend.map.Evidence;
import org.relegend.map.MapInfo;
import org.relegend.map.NameRules;
import org.relegend.map.Page;
import org.relegend.map.Picture;
import org.relegend.share.Disagreement;
import org.relegend.share.Disagreements;
import org.relegend.share.OwnScans;
import org.relegend.share.PackReader;
import org.relegend.share.ShareException;
import org.relegend.share.TrustReport;
import org.relegend.store.Json;
import org.relegend.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code unpack FILE FOLDER [--scan FILE …]}. */
@Command(
    name = "unpack",
    description = {
      "Unpacks a map that somebody else packed, and says how far it is measured and how far inferred.",
      "A scan of your own with the same digest is put in its place at once; any other is lined up",
      "with the page it shows, by the pins placed there. Where that would be a guess it says so, and",
      "the two are lined up by pairs (lineup). Your own photos: add them, then lineup."
    })
final class UnpackCommand extends JsonCommand {
  @Parameters(index = "0", paramLabel = "FILE", description = "the pack")
  private Path file = Path.of("");

  @Parameters(index = "1", paramLabel = "FOLDER", description = "a new folder")
  private Path folder = Path.of("");

  @Option(names = "--scan", paramLabel = "FILE", description = "a scan or photo of your own")
  private List<Path> scans = List.of();

  @Mixin private AuthorOption author = new AuthorOption();

  @Override
  CommandResult answer() throws CommandFailure, StoreException {
    try (PackReader pack = PackReader.open(file)) {
      PackReader.Unpacked done = pack.into(folder, scans, author.attestation(Evidence.MATCHED));
      TrustReport trust = TrustReport.of(pack.map());
      return CommandResult.ok(() -> json(done, trust), out -> print(out, done, trust));
    } catch (ShareException refused) {
      throw new CommandFailure(String.valueOf(refused.getMessage()));
    }
  }

  private Json json(PackReader.Unpacked done, TrustReport trust) {
    return Json.object()
        .put("folder", folder.toString())
        .put("id", done.map().id())
        .put("title", done.map().info().title())
        .put("missing", Json.array(done.missing(), picture -> Json.of(picture.id().text())))
        .put("scans", Json.array(done.scans(), UnpackCommand::json))
        .put("authors", Json.array(trust.authors(), TrustCommand::author))
        .put(
            "disagreements",
            Json.array(
                Disagreements.of(done.map()), one -> TrustCommand.disagreement(done.map(), one)));
  }

  private static Json json(OwnScans.ScanOutcome result) {
    Json.Obj json =
        Json.object().put("file", result.scan().toString()).put("number", (long) result.number());
    if (result.shown().isPresent()) {
      json = json.put("shows", result.shown().get().id().text());
    }
    if (result.own().isPresent()) {
      json = json.put("picture", result.own().get().text());
    }
    return result.why().isEmpty() ? json : json.put("why", result.why());
  }

  /** What the map is of; a unit of another issue may differ. */
  private static List<String> issueText(MapInfo info) {
    String of = (info.maker() + " " + info.model()).strip();
    String issue = info.issue().isEmpty() ? "" : "issue " + info.issue();
    String text = of.isEmpty() || issue.isEmpty() ? of + issue : of + ", " + issue;
    return text.isEmpty() ? List.of() : List.of("of " + text + ": look whether yours is the same");
  }

  private void print(PrintWriter out, PackReader.Unpacked done, TrustReport trust) {
    out.println("Unpacked \"%s\" to %s.".formatted(done.map().info().title(), folder));
    issueText(done.map().info()).forEach(out::println);
    trust.lines().forEach(out::println);
    List<Disagreement> differences = Disagreements.of(done.map());
    if (!differences.isEmpty()) {
      TrustCommand.print(out, differences);
    }
    done.scans().forEach(result -> out.println(NameRules.spelledOut(result.line())));
    for (Picture picture : done.missing()) {
      boolean linedUp =
          done.scans().stream()
              .anyMatch(t -> t.shown().map(Picture::id).equals(Optional.of(picture.id())));
      if (!linedUp) {
        out.println(NameRules.spelledOut(advice(picture)));
      }
    }
  }

  /** What works for a picture that isn't there: its own name can't be lined up with a bare PDF. */
  private String advice(Picture picture) {
    String add =
        picture instanceof Page
            ? "add your own scan (add %s FILE --page N)"
            : "add your own photo (add %s FILE --photo NAME --side SIDE)";
    return "%s %s is not in it: %s, then line the two up (lineup %s %s OWN --pairs F --accept)."
        .formatted(
            picture instanceof Page ? "page" : "photo",
            picture.caption(),
            add.formatted(folder),
            folder,
            picture.id());
  }
}
